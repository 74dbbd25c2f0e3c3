package drawwell.ui.pictures

import androidx.compose.foundation.Canvas
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.geometry.Size
import androidx.compose.ui.graphics.Path
import androidx.compose.ui.graphics.StrokeCap
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.graphics.drawscope.clipPath
import drawwell.ui.look.Colours
import drawwell.ui.look.LocalColours

/** The sign of Drawwell: looking into a round well, two columns of water, each at its own line. */
@Composable
internal fun WellMark(modifier: Modifier = Modifier) {
    val colours = LocalColours.current
    Canvas(modifier) { wellMark(colours) }
}

/** Drawn to fill the canvas; the same shape lies in the host's resources as a picture file. */
internal fun DrawScope.wellMark(colours: Colours) {
    val side = size.minDimension
    val origin = Offset((size.width - side) / 2, (size.height - side) / 2)
    val round = Path().apply { addOval(Rect(origin, Size(side, side))) }
    val wall = side * 0.035f
    val middle = origin.x + side / 2
    clipPath(round) {
        drawRect(colours.shaft.ground)
        level(origin.x, middle - wall, origin.y + side * 0.40f, origin.y + side, side, colours)
        level(middle + wall, origin.x + side, origin.y + side * 0.56f, origin.y + side, side, colours)
        drawRect(colours.page.ground, Offset(middle - wall, origin.y), Size(wall * 2, side))
    }
}

private fun DrawScope.level(left: Float, right: Float, y: Float, bottom: Float, side: Float, colours: Colours) {
    drawRect(colours.water.ground, Offset(left, y), Size(right - left, bottom - y))
    drawLine(colours.shaft.edge, Offset(left, y), Offset(right, y), side * 0.05f, StrokeCap.Butt)
}
