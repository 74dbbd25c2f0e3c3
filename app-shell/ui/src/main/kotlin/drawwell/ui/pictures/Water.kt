package drawwell.ui.pictures

import androidx.compose.ui.geometry.CornerRadius
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.geometry.RoundRect
import androidx.compose.ui.graphics.Path
import androidx.compose.ui.graphics.PathEffect
import androidx.compose.ui.graphics.StrokeCap
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.graphics.drawscope.Stroke
import androidx.compose.ui.graphics.drawscope.clipPath
import androidx.compose.ui.unit.dp
import drawwell.ui.look.Colours

/** The one recurring graphic: a plain column, open above, and the line of the water in it. */
internal object Water {
    /** Draws the empty column. */
    fun DrawScope.shaft(area: Rect, colours: Colours) {
        drawPath(inside(area), colours.shaft.ground)
        val round = 14.dp.toPx()
        val walls = Path().apply {
            moveTo(area.left, area.top)
            lineTo(area.left, area.bottom - round)
            quadraticTo(area.left, area.bottom, area.left + round, area.bottom)
            lineTo(area.right - round, area.bottom)
            quadraticTo(area.right, area.bottom, area.right, area.bottom - round)
            lineTo(area.right, area.top)
        }
        drawPath(walls, colours.shaft.edge, style = Stroke(WALL.toPx(), cap = StrokeCap.Round))
    }

    /** Fills it to a height between 0 and 1. The water climbs a little at the walls, as it does. */
    fun DrawScope.water(area: Rect, height: Float, colours: Colours) {
        val y = lineAt(area, height)
        val surface = surface(area, y)
        val body = Path().apply {
            addPath(surface)
            lineTo(area.right, area.bottom)
            lineTo(area.left, area.bottom)
            close()
        }
        clipPath(inside(area)) {
            drawPath(body, colours.water.ground)
        }
        drawPath(surface, colours.shaft.edge, style = Stroke(LINE.toPx(), cap = StrokeCap.Round))
    }

    /** A fainter line: what it was. */
    fun DrawScope.ghost(area: Rect, height: Float, colours: Colours, over: Boolean) {
        val y = lineAt(area, height)
        val inset = 10.dp.toPx()
        drawLine(
            if (over) colours.water.edge else colours.shaft.edge,
            Offset(area.left + inset, y),
            Offset(area.right - inset, y),
            2.dp.toPx(),
            StrokeCap.Round,
            PathEffect.dashPathEffect(floatArrayOf(3.dp.toPx(), 7.dp.toPx())),
        )
    }

    private fun DrawScope.lineAt(area: Rect, height: Float) =
        area.bottom - (area.height - 8.dp.toPx()) * height.coerceIn(0f, 1f)

    private fun DrawScope.surface(area: Rect, y: Float) = Path().apply {
        val climb = 5.dp.toPx()
        val reach = 16.dp.toPx()
        moveTo(area.left, y - climb)
        quadraticTo(area.left + reach / 4, y, area.left + reach, y)
        lineTo(area.right - reach, y)
        quadraticTo(area.right - reach / 4, y, area.right, y - climb)
    }

    private fun DrawScope.inside(area: Rect) = Path().apply {
        val round = CornerRadius(14.dp.toPx())
        addRoundRect(RoundRect(area, bottomLeft = round, bottomRight = round))
    }

    private val WALL = 1.5.dp
    private val LINE = 3.dp
}
