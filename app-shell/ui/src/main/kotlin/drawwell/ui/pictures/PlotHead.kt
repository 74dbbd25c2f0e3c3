package drawwell.ui.pictures

import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.text.TextLayoutResult
import androidx.compose.ui.text.TextMeasurer
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.text.drawText
import androidx.compose.ui.unit.Density
import androidx.compose.ui.unit.dp
import drawwell.surface.PlotStretch
import drawwell.ui.look.Colours

/** The words of the stretches, each over its own beginning; one that would touch another stands a row higher. */
internal class PlotHead(stretches: List<PlotStretch>, wide: Float, measurer: TextMeasurer, style: TextStyle, density: Density) {
    private class Word(val from: Float, val words: TextLayoutResult)

    private val rows = mutableListOf<MutableList<Word>>()
    private val line = measurer.measure("0", style).size.height.toFloat()

    /** What the words take away above the stretches. */
    val above: Float get() = rows.size * line

    init {
        val between = with(density) { 8.dp.toPx() }
        stretches.filter { it.label.isNotEmpty() }.sortedBy { it.from }.forEach { stretch ->
            val words = measurer.measure(stretch.label, style, maxLines = 1)
            val from = minOf(stretch.from * wide, wide - words.size.width).coerceAtLeast(0f)
            val row = rows.firstOrNull { row -> row.all { it.from + it.words.size.width + between <= from } }
            (row ?: mutableListOf<Word>().also { rows += it }) += Word(from, words)
        }
    }

    fun DrawScope.draw(head: Rect, colours: Colours) = rows.forEachIndexed { row, words ->
        words.forEach { drawText(it.words, colours.page.ink, Offset(head.left + it.from, head.top - (row + 1) * line)) }
    }
}
