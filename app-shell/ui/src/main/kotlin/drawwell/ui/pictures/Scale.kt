package drawwell.ui.pictures

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.layout.width
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.text.drawText
import androidx.compose.ui.text.rememberTextMeasurer
import androidx.compose.ui.unit.Dp
import androidx.compose.ui.unit.dp
import drawwell.surface.Tick
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.LocalTone

/** The marks along the height of the columns, standing between them. */
@Composable
internal fun Scale(ticks: List<Tick>, modifier: Modifier = Modifier) {
    val measurer = rememberTextMeasurer()
    val style = LocalLettering.current.tick.copy(color = LocalTone.current.soft)
    Canvas(modifier.width(scaleWidth(ticks))) {
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

/** How wide the scale is drawn, so that what stands over the columns can stand over them. */
@Composable
internal fun scaleWidth(ticks: List<Tick>): Dp {
    val measurer = rememberTextMeasurer()
    val style = LocalLettering.current.tick
    val widest = ticks.maxOfOrNull { measurer.measure(it.label, style).size.width } ?: 0
    return with(LocalDensity.current) { widest.toDp() } + 4.dp
}
