package drawwell.ui.pictures

import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.graphics.Path
import androidx.compose.ui.graphics.StrokeCap
import androidx.compose.ui.graphics.StrokeJoin
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.graphics.drawscope.Stroke
import androidx.compose.ui.unit.dp
import drawwell.surface.Part
import drawwell.surface.PlotPoint
import drawwell.ui.look.Colours

/** Points with their range: round for left, square for right, a diamond for both or neither; hollow where none was read. */
internal object PlotPoints {
    fun DrawScope.points(points: List<PlotPoint>, area: Rect, colours: Colours) {
        points.forEach { whisker(it, area, colours) }
        points.forEach { sign(it, area, colours) }
    }

    private fun DrawScope.whisker(point: PlotPoint, area: Rect, colours: Colours) {
        val low = place(point, point.low, area)
        val high = place(point, point.high, area)
        val cap = Offset(4.dp.toPx(), 0f)
        drawLine(colours.page.ground, low, high, 4.dp.toPx())
        drawLine(colours.bars.ink, low, high, LINE.toPx(), StrokeCap.Round)
        listOf(low, high).forEach { drawLine(colours.bars.ink, it - cap, it + cap, LINE.toPx(), StrokeCap.Round) }
    }

    private fun DrawScope.sign(point: PlotPoint, area: Rect, colours: Colours) {
        val shape = shape(point, place(point, point.middle, area))
        drawPath(shape, colours.page.ground, style = Stroke(6.dp.toPx(), join = StrokeJoin.Round))
        drawPath(shape, if (point.open) colours.page.ground else colours.bars.ink)
        drawPath(shape, colours.bars.ink, style = Stroke(2.dp.toPx(), join = StrokeJoin.Miter))
    }

    private fun DrawScope.shape(point: PlotPoint, at: Offset) = Path().apply {
        val reach = REACH.toPx()
        when (point.part) {
            Part.LEFT -> addOval(Rect(at, reach))
            Part.RIGHT -> addRect(Rect(at, reach * 0.9f))
            else -> {
                val far = reach * 1.25f
                moveTo(at.x, at.y - far)
                lineTo(at.x + far, at.y)
                lineTo(at.x, at.y + far)
                lineTo(at.x - far, at.y)
                close()
            }
        }
    }

    /** Left a little to the left and right to the right, so that two of one moment are two. */
    private fun DrawScope.place(point: PlotPoint, height: Float, area: Rect): Offset {
        val aside = when (point.part) {
            Part.LEFT -> -ASIDE.toPx()
            Part.RIGHT -> ASIDE.toPx()
            else -> 0f
        }
        val edge = (REACH * 2).toPx()
        val x = (area.left + point.at * area.width + aside).coerceIn(area.left + edge, area.right - edge)
        return Offset(x, area.bottom - height * area.height)
    }

    private val REACH = 4.5.dp
    private val ASIDE = 5.dp
    private val LINE = 1.5.dp
}
