package drawwell.ui.pictures

import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.geometry.Size
import androidx.compose.ui.graphics.PathEffect
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.text.TextLayoutResult
import androidx.compose.ui.text.TextMeasurer
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.text.drawText
import androidx.compose.ui.unit.Constraints
import androidx.compose.ui.unit.Density
import androidx.compose.ui.unit.dp
import drawwell.surface.Tick
import drawwell.ui.look.Colours

/**
 * Where something changed: a line down through the plot, and at its top what, as a flag. The last one flies lowest, one
 * before it higher where it would else be crossed by another's line or words.
 */
internal class PlotMarks(marks: List<Tick>, wide: Float, measurer: TextMeasurer, style: TextStyle, density: Density) {
    private class Flag(val x: Float, val words: TextLayoutResult, val from: Float, val row: Int) {
        val to get() = from + words.wide()
    }

    private val room = with(density) { 4.dp.toPx() }
    private val flags = mutableListOf<Flag>()
    private val rows: List<Int>

    /** What the flags take away above the plot. */
    val above: Float

    init {
        marks.sortedByDescending { it.at }.forEach { mark ->
            val x = mark.at * wide
            val sides = listOf(wide - x, x).map { side -> (side - room).coerceIn(1f, wide * MOST) }
            val words = sides.map { measurer.measure(mark.label, style, constraints = Constraints(maxWidth = it.toInt().coerceAtLeast(1))) }
            // The side where it takes fewer lines, or after its line where that is all one.
            val after = words[0].lineCount <= words[1].lineCount
            val said = if (after) words[0] else words[1]
            val from = if (after) x + room else x - room - said.wide()
            flags += (0..flags.size).map { Flag(x, said, from, it) }.let { all -> all.firstOrNull { it.flies() } ?: all.last() }
        }
        rows = (0..(flags.maxOfOrNull { it.row } ?: -1)).map { row -> flags.filter { it.row == row }.maxOfOrNull { it.words.size.height } ?: 0 }
        above = rows.sum().toFloat()
    }

    /** Each line down through the picture; `foot` is where the lowest flag stands. */
    fun DrawScope.draw(area: Rect, foot: Float, colours: Colours) {
        val dashes = PathEffect.dashPathEffect(floatArrayOf(5.dp.toPx(), 4.dp.toPx()))
        flags.forEach { flag ->
            val top = foot - rows.take(flag.row + 1).sum()
            val x = area.left + flag.x
            drawLine(colours.page.ink, Offset(x, top + 2.dp.toPx()), Offset(x, area.bottom), 1.5.dp.toPx(), pathEffect = dashes)
            drawRect(colours.page.ground, Offset(area.left + flag.from, top), Size(flag.words.wide(), flag.words.size.height.toFloat()))
            drawText(flag.words, colours.page.ink, Offset(area.left + flag.from, top))
        }
    }

    /** Whether it touches no other's words, no other's line goes through its own words, nor its line through theirs. */
    private fun Flag.flies(): Boolean = flags.none { other ->
        val words = other.row == row && from - room < other.to && other.from < to + room
        val crossed = other.row >= row && other.x > from - room && other.x < to + room
        val crosses = other.row <= row && x > other.from - room && x < other.to + room
        words || crossed || crosses
    }

    private companion object {
        /** The most of the plot's width that one may take before it wraps. */
        const val MOST = 0.6f
    }
}

private fun TextLayoutResult.wide(): Float = (0 until lineCount).maxOf { getLineRight(it) }
