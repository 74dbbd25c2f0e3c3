package drawwell.ui.pictures

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.semantics.clearAndSetSemantics
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.testTag
import androidx.compose.ui.text.rememberTextMeasurer
import androidx.compose.ui.unit.dp
import drawwell.surface.Strip
import drawwell.ui.look.LocalColours
import drawwell.ui.look.LocalLettering

/** A session as it ran. The small one, for a row, has the shapes without their words. */
@Composable
internal fun StripPicture(strip: Strip, modifier: Modifier = Modifier, small: Boolean = false, running: Boolean = false) {
    val colours = LocalColours.current
    val style = LocalLettering.current.tick
    val words = StripWords(rememberTextMeasurer(), style.copy(color = colours.page.soft), style.copy(color = colours.shaft.ink))
    Canvas(
        modifier.fillMaxWidth().clearAndSetSemantics {
            contentDescription = strip.spoken
            testTag = "strip"
        },
    ) {
        val ticks = if (small) 0f else words.line()
        val pains = if (small) 11.dp.toPx() else 26.dp.toPx()
        val notches = if (small) 5.dp.toPx() else 9.dp.toPx()
        val bands = Rect(0f, notches, size.width, (size.height - pains - ticks).coerceAtLeast(notches + 6.dp.toPx()))
        val end = bands.width * (strip.bands.maxOfOrNull { it.to } ?: 1f)
        drawLine(colours.page.edge, bands.bottomLeft, bands.bottomRight, 1.dp.toPx())
        with(StripBands) { bands(strip.bands, bands, colours, if (small) null else words) }
        with(StripLines) {
            if (!small) steps(strip.cycles, bands, end, colours, CYCLES, broken = true)
            steps(strip.vacuum, bands, end, colours, if (small) SMALL_VACUUM else VACUUM, broken = false)
            notches(strip.notches, bands, colours)
        }
        with(StripPains) { pains(strip.pains, bands.bottom, pains, colours) }
        if (!small) words.run { ticks(strip.ticks, bands.bottom + pains) }
        if (running) {
            val x = (end + 1.dp.toPx()).coerceAtMost(size.width - 5.dp.toPx())
            drawLine(colours.running.edge, Offset(x, 5.dp.toPx()), Offset(x, bands.bottom), 3.dp.toPx())
            drawCircle(colours.running.edge, 5.dp.toPx(), Offset(x, 5.dp.toPx()))
        }
    }
}

private val VACUUM = 3.5.dp
private val SMALL_VACUUM = 2.dp
private val CYCLES = 2.dp
