package drawwell.ui.pictures

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.layout.width
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.text.drawText
import androidx.compose.ui.text.rememberTextMeasurer
import androidx.compose.ui.unit.dp
import drawwell.surface.Tick
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.LocalTone

/** The marks along the height of the columns, standing between them. */
@Composable
internal fun Scale(ticks: List<Tick>, modifier: Modifier = Modifier) {
    val measurer = rememberTextMeasurer()
    val tone = LocalTone.current
    val style = LocalLettering.current.tick.copy(color = tone.soft)
    val widest = ticks.maxOfOrNull { measurer.measure(it.label, style).size.width } ?: 0
    val density = androidx.compose.ui.platform.LocalDensity.current
    Canvas(modifier.width(with(density) { widest.toDp() } + 4.dp)) {
        var free = size.height
        ticks.sortedBy { it.at }.forEach { tick ->
            val words = measurer.measure(tick.label, style)
            val y = (size.height - 8.dp.toPx()) * (1 - tick.at) + 8.dp.toPx()
            val top = (y - words.size.height / 2f).coerceIn(0f, size.height - words.size.height)
            if (top + words.size.height <= free) {
                drawText(words, topLeft = Offset((size.width - words.size.width) / 2, top))
                free = top
            }
        }
    }
}
