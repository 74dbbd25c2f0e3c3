package drawwell.ui.pictures

import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.geometry.Size
import androidx.compose.ui.graphics.Color
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.text.TextMeasurer
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.text.drawText
import androidx.compose.ui.unit.dp
import drawwell.surface.Tick

/** The words on a strip of time: only those that have room. */
internal class StripWords(
    private val measurer: TextMeasurer,
    private val below: TextStyle,
    private val within: TextStyle,
) {
    fun line(): Float = measurer.measure("0", below).size.height.toFloat()

    /** Labels under the line of time, as `wide` as it is, each centred on its moment, the last one first served. */
    fun DrawScope.ticks(ticks: List<Tick>, top: Float, wide: Float = size.width) {
        var free = wide
        ticks.sortedByDescending { it.at }.forEach { tick ->
            val words = measurer.measure(tick.label, below)
            val left = (tick.at * wide - words.size.width / 2f).coerceIn(0f, (wide - words.size.width).coerceAtLeast(0f))
            if (left + words.size.width <= free) {
                drawText(words, topLeft = Offset(left, top))
                free = left - 8.dp.toPx()
            }
        }
    }

    /** Words in the middle of an area where they fit into it, on a ground of their own where that is not calm. */
    fun DrawScope.amid(label: String, area: Rect, colour: Color, ground: Color?) {
        if (label.isEmpty()) return
        val words = measurer.measure(label, within.copy(color = colour), maxLines = 1)
        val room = 4.dp.toPx()
        if (words.size.width + 2 * room > area.width || words.size.height > area.height) return
        val from = Offset(area.center.x - words.size.width / 2f, area.center.y - words.size.height / 2f)
        if (ground != null) {
            drawRect(ground, Offset(from.x - room, area.top + 1.dp.toPx()), Size(words.size.width + 2 * room, area.height - 2.dp.toPx()))
        }
        drawText(words, topLeft = from)
    }

    /** The name of a band, at its foot. */
    fun DrawScope.name(label: String, area: Rect, colour: Color) {
        val words = measurer.measure(label, within.copy(color = colour))
        val room = 6.dp.toPx()
        if (words.size.width + 2 * room <= area.width && words.size.height <= area.height * StripBands.FILL) {
            val middle = area.bottom - area.height * StripBands.FILL / 2
            drawText(words, topLeft = Offset(area.left + room, middle - words.size.height / 2f))
        }
    }
}
