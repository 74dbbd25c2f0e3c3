package drawwell.ui.pictures

import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.graphics.Path
import androidx.compose.ui.graphics.PathEffect
import androidx.compose.ui.graphics.StrokeCap
import androidx.compose.ui.graphics.StrokeJoin
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.graphics.drawscope.Stroke
import androidx.compose.ui.text.TextMeasurer
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.text.drawText
import androidx.compose.ui.unit.dp
import drawwell.surface.BreakMark
import drawwell.surface.RibbonPoint
import drawwell.surface.Tick
import drawwell.ui.look.Colours

/** The course as a water line with the range it may lie in, the breaks above it, and the aim. */
internal object CourseRibbon {
    fun DrawScope.ribbon(points: List<RibbonPoint>, area: Rect, colours: Colours) {
        if (points.size < 2) return
        fun at(x: Float, y: Float) = Offset(area.left + x * area.width, area.bottom - y * area.height)
        fun line(of: (RibbonPoint) -> Float) = Path().apply {
            points.forEachIndexed { i, point ->
                val place = at(point.at, of(point))
                if (i == 0) moveTo(place.x, place.y) else lineTo(place.x, place.y)
            }
        }
        val fill = line { it.high }.apply {
            points.reversed().forEach { point -> at(point.at, point.low).let { lineTo(it.x, it.y) } }
            close()
        }
        drawPath(fill, colours.running.edge, alpha = VEIL)
        val dashes = PathEffect.dashPathEffect(floatArrayOf(2.dp.toPx(), 4.dp.toPx()))
        listOf(line { it.low }, line { it.high }).forEach { edge ->
            drawPath(edge, colours.page.ground, style = Stroke(3.dp.toPx(), join = StrokeJoin.Round))
            drawPath(edge, colours.running.edge, style = Stroke(1.dp.toPx(), pathEffect = dashes))
        }
        val middle = line { it.middle }
        drawPath(middle, colours.page.ground, style = Stroke(6.dp.toPx(), cap = StrokeCap.Round, join = StrokeJoin.Round))
        drawPath(middle, colours.running.edge, style = Stroke(3.dp.toPx(), cap = StrokeCap.Round, join = StrokeJoin.Round))
    }

    /** A bracket over the days in which it changed; the label where there is room for it. */
    fun DrawScope.breaks(marks: List<BreakMark>, area: Rect, measurer: TextMeasurer, style: TextStyle, colours: Colours) {
        var free = 0f
        marks.forEach { mark ->
            val left = area.left + mark.from * area.width
            val right = maxOf(area.left + mark.to * area.width, left + 6.dp.toPx())
            val foot = 5.dp.toPx()
            val bracket = Path().apply {
                moveTo(left, area.top)
                lineTo(left, area.top - foot)
                lineTo(right, area.top - foot)
                lineTo(right, area.top)
            }
            drawPath(bracket, colours.running.edge, style = Stroke(2.dp.toPx(), cap = StrokeCap.Round, join = StrokeJoin.Round))
            val words = measurer.measure(mark.label, style.copy(color = colours.running.ink))
            val start = ((left + right) / 2 - words.size.width / 2f).coerceIn(0f, (size.width - words.size.width).coerceAtLeast(0f))
            if (start >= free) {
                drawText(words, topLeft = Offset(start, area.top - foot - words.size.height))
                free = start + words.size.width + 8.dp.toPx()
            }
        }
    }

    fun DrawScope.aim(aim: Tick, area: Rect, measurer: TextMeasurer, style: TextStyle, colours: Colours) {
        val y = area.bottom - aim.at * area.height
        val dashes = PathEffect.dashPathEffect(floatArrayOf(9.dp.toPx(), 5.dp.toPx()))
        drawLine(colours.page.ground, Offset(area.left, y), Offset(area.right, y), 5.dp.toPx())
        drawLine(colours.page.ink, Offset(area.left, y), Offset(area.right, y), 1.5.dp.toPx(), pathEffect = dashes)
        val words = measurer.measure(aim.label, style.copy(color = colours.page.ink, background = colours.page.ground))
        drawText(words, topLeft = Offset(area.left, y - words.size.height - 3.dp.toPx()))
    }

    private const val VEIL = 0.16f
}
