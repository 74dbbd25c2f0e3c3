package drawwell.ui.pictures

import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.graphics.PathEffect
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.text.TextMeasurer
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.text.drawText
import androidx.compose.ui.unit.dp
import drawwell.surface.Tick
import drawwell.ui.look.Colours

/** Labels along the height at the right edge, each with a dotted line to it. */
internal fun DrawScope.heightScale(scale: List<Tick>, area: Rect, measurer: TextMeasurer, style: TextStyle, colours: Colours) {
    val dots = PathEffect.dashPathEffect(floatArrayOf(1.dp.toPx(), 6.dp.toPx()))
    scale.forEach { tick ->
        val y = area.bottom - tick.at * area.height
        val words = measurer.measure(tick.label, style)
        val until = size.width - words.size.width - 6.dp.toPx()
        if (tick.at > 0f) drawLine(colours.page.edge, Offset(0f, y), Offset(until, y), 1.dp.toPx(), pathEffect = dots)
        drawText(words, topLeft = Offset(size.width - words.size.width, y - words.size.height / 2f))
    }
}
