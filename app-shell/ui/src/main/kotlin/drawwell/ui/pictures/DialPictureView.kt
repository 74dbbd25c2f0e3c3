package drawwell.ui.pictures

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.BoxWithConstraints
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.size
import androidx.compose.foundation.layout.widthIn
import androidx.compose.runtime.Composable
import androidx.compose.runtime.remember
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.semantics.clearAndSetSemantics
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.testTag
import androidx.compose.ui.text.rememberTextMeasurer
import androidx.compose.ui.unit.dp
import androidx.compose.ui.unit.toSize
import drawwell.surface.DialPicture
import drawwell.ui.look.LocalColours
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.Measures
import drawwell.ui.pictures.DialRim.rim
import drawwell.ui.pictures.DialRim.ticks

/** A dial like the gauge in the hand, and what its signs mean. It points the same way in either hand. */
@Composable
internal fun DialPictureView(dial: DialPicture, modifier: Modifier = Modifier) {
    Column(modifier.fillMaxWidth(), Arrangement.spacedBy(Measures.apart), Alignment.CenterHorizontally) {
        BoxWithConstraints(Modifier.widthIn(max = WIDEST)) {
            val colours = LocalColours.current
            val lettering = LocalLettering.current
            val density = LocalDensity.current
            val measurer = rememberTextMeasurer(MEASURED)
            val style = lettering.tick.copy(color = colours.page.soft)
            val wide = with(density) { maxWidth.toPx() }
            val face = remember(wide, dial.ticks, measurer, style, density) {
                DialFace(wide, dial.ticks.map { DialFace.Label(it, measurer.measure(it.label, style).size.toSize()) }, density)
            }
            val hands = DialHands(dial.hands, face, measurer, lettering.label, colours)
            Canvas(
                Modifier.size(maxWidth, with(density) { face.size.height.toDp() }).clearAndSetSemantics {
                    contentDescription = dial.spoken
                    testTag = "dial"
                },
            ) {
                rim(face, dial.arcs, colours)
                ticks(face, dial.ticks, measurer, style, colours)
                hands.run { draw() }
                dialFigure(dial, face, measurer, lettering, colours)
            }
        }
        PictureLegend(dial.arcs.map { it.label }, dial.legend)
    }
}

private val WIDEST = 340.dp
private const val MEASURED = 24
