package drawwell.ui.pictures

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.clickable
import androidx.compose.foundation.layout.BoxWithConstraints
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.height
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.remember
import androidx.compose.runtime.saveable.rememberSaveable
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.semantics.clearAndSetSemantics
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.testTag
import androidx.compose.ui.text.rememberTextMeasurer
import androidx.compose.ui.unit.Dp
import androidx.compose.ui.unit.dp
import drawwell.surface.NightPicture
import drawwell.ui.look.Colours
import drawwell.ui.look.LocalColours
import drawwell.ui.look.LocalLettering
import drawwell.ui.parts.Words
import drawwell.ui.pictures.NightGround.present
import drawwell.ui.pictures.NightGround.window
import drawwell.ui.pictures.NightLanes.lanes
import drawwell.ui.pictures.NightPegs.pegs
import drawwell.ui.pictures.NightWater.water

/** A strip from dusk to morning: sessions as pegs, sleep as what is left between them, and over it the water that they draw off. A tap opens what its signs mean. */
@Composable
internal fun NightPictureView(night: NightPicture, modifier: Modifier = Modifier) {
    var open by rememberSaveable(night.legendOpen) { mutableStateOf(night.legendOpen) }
    BoxWithConstraints(modifier) {
        val ends = constraints.hasBoundedHeight
        Column(Modifier.fillMaxWidth()) {
            Strip(night, if (ends) Modifier.weight(1f, fill = false) else Modifier) { open = !open }
            NightLegend(night.stretches, asks = !open)
            if (open) Words(night.legend, LocalLettering.current.tick, soft = true)
        }
    }
}

/** As tall as its place; where that has no end, or there is no water to grow, as tall as it needs. */
@Composable
private fun Strip(night: NightPicture, modifier: Modifier, tapped: () -> Unit) = BoxWithConstraints(modifier) {
    val colours = LocalColours.current
    val density = LocalDensity.current
    val measurer = rememberTextMeasurer(MEASURED)
    val style = LocalLettering.current.tick.copy(color = colours.page.soft)
    val needs = tall()
    val height = if (constraints.hasBoundedHeight && night.water.isNotEmpty()) maxHeight else minOf(maxHeight, needs)
    val (wide, tall) = with(density) { maxWidth.toPx() to height.toPx() }
    val frame = remember(night, wide, tall, measurer, style, density) { NightFrame(night, wide, tall, measurer, style, density) }
    Canvas(
        Modifier.fillMaxWidth().height(height).clickable(onClickLabel = night.legendOpens, onClick = tapped).clearAndSetSemantics {
            contentDescription = night.spoken
            testTag = "night-picture"
        },
    ) { night(night, frame, colours) }
}

/** From the ground up: the time for sleep, the water, what fills the time, the pegs with their times, the present moment. */
private fun DrawScope.night(night: NightPicture, frame: NightFrame, colours: Colours) {
    window(night.stretches, frame, colours)
    if (frame.holdsWater) {
        frame.scale.run { draw(frame.water, colours) }
        water(night.water, frame.water, colours)
    }
    lanes(night.stretches, frame, colours)
    night.now?.let { present(it, frame, colours) }
    pegs(night.pegs, frame, colours)
    frame.words.run { ticks(night.ticks, frame.ticks, frame.pegs.width) }
}

/** Its shapes, and its lines of words. */
@Composable
private fun tall(): Dp {
    val line = with(LocalDensity.current) { LocalLettering.current.tick.lineHeight.toDp() }
    return SHAPES + line * LINES
}

private const val MEASURED = 48
private val SHAPES = 150.dp
private const val LINES = 6
