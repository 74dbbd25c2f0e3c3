package drawwell.ui.pictures

import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.graphics.PathEffect
import androidx.compose.ui.graphics.StrokeCap
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.text.TextMeasurer
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.text.drawText
import androidx.compose.ui.unit.dp
import drawwell.surface.BreakMark
import drawwell.ui.look.Colours

/** Where the level changed: the ground breaks off and goes on, and the date stands over it. */
internal object CourseBreaks {
    /** The gap of each, from over the picture down to its ground, never too narrow to be seen. */
    fun DrawScope.gaps(marks: List<BreakMark>, area: Rect): List<Rect> = marks.map { mark ->
        val middle = area.left + (mark.from + mark.to) / 2 * area.width
        val wide = maxOf((mark.to - mark.from) * area.width, NARROW.toPx())
        val left = (middle - wide / 2).coerceIn(area.left, area.right - wide.coerceAtMost(area.width))
        // What would be left of the course at an edge is too little to be read as one.
        val from = if (left - area.left < NARROW.toPx()) area.left else left
        val to = if (area.right - left - wide < NARROW.toPx()) area.right else left + wide
        Rect(from, area.top - STEM.toPx(), to, area.bottom)
    }

    fun DrawScope.ground(gaps: List<Rect>, area: Rect, colours: Colours) {
        var from = area.left
        fun piece(to: Float) {
            if (to > from) drawLine(colours.page.edge, Offset(from, area.bottom), Offset(to, area.bottom), 1.5.dp.toPx())
        }
        gaps.sortedBy { it.left }.forEach { gap ->
            piece(gap.left)
            from = maxOf(from, gap.right)
            listOf(gap.left, gap.right).forEach { slant(it, area.bottom, colours) }
        }
        piece(area.right)
    }

    /** The walls of each gap, and its date; of two that would touch the later one is said. */
    fun DrawScope.dates(marks: List<BreakMark>, gaps: List<Rect>, area: Rect, measurer: TextMeasurer, style: TextStyle, colours: Colours) {
        val dashes = PathEffect.dashPathEffect(floatArrayOf(2.dp.toPx(), 4.dp.toPx()))
        var free = area.right
        marks.zip(gaps).sortedByDescending { it.second.left }.forEach { (mark, gap) ->
            listOf(gap.left, gap.right).forEach { x ->
                drawLine(colours.page.ink, Offset(x, gap.top), Offset(x, gap.bottom), 1.dp.toPx(), StrokeCap.Butt, dashes)
            }
            val words = measurer.measure(mark.label, style.copy(color = colours.page.ink))
            val left = (gap.center.x - words.size.width / 2f).coerceIn(0f, (area.right - words.size.width).coerceAtLeast(0f))
            if (left + words.size.width <= free) {
                drawText(words, topLeft = Offset(left, 0f))
                free = left - 8.dp.toPx()
            }
        }
    }

    /** How far the walls stand out over the picture. */
    val STEM = 5.dp

    private fun DrawScope.slant(x: Float, ground: Float, colours: Colours) {
        val reach = 4.dp.toPx()
        drawLine(colours.page.ink, Offset(x - reach / 2, ground + reach), Offset(x + reach / 2, ground - reach), 1.5.dp.toPx(), StrokeCap.Round)
    }

    private val NARROW = 10.dp
}
