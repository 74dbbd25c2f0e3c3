package drawwell.ui.pictures

import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.graphics.Path
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.unit.dp
import drawwell.surface.RibbonPoint
import drawwell.ui.look.Colours
import drawwell.ui.pictures.CourseRibbon.ribbon

/** What the breasts hold, as water that draws in and is drawn off: calm below, and its line within the range it may lie in. */
internal object NightWater {
    fun DrawScope.water(points: List<RibbonPoint>, area: Rect, colours: Colours) {
        if (points.size < 2 || area.height <= 0f) return
        val body = Path().apply {
            moveTo(area.left + points.first().at * area.width, area.bottom)
            points.forEach { lineTo(area.left + it.at * area.width, area.bottom - it.low * area.height) }
            lineTo(area.left + points.last().at * area.width, area.bottom)
            close()
        }
        drawPath(body, colours.bars.ground)
        ribbon(points, emptyList(), area, colours)
        drawLine(colours.page.edge, area.bottomLeft, area.bottomRight, 1.dp.toPx())
    }
}
