package drawwell.ui.parts

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.draw.alpha
import androidx.compose.ui.draw.drawBehind
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.graphics.Color
import androidx.compose.ui.graphics.StrokeCap
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.text.style.TextAlign
import androidx.compose.ui.unit.dp
import drawwell.surface.Action
import drawwell.surface.Event
import drawwell.surface.Sign
import drawwell.surface.Weight
import drawwell.ui.look.Colours
import drawwell.ui.look.Lettering
import drawwell.ui.look.LocalColours
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.LocalTone
import drawwell.ui.look.Tone
import drawwell.ui.pictures.SignPicture

/** An action in its place, drawn as strongly as it weighs. */
@Composable
internal fun ActionButton(
    action: Action,
    send: (Event) -> Unit,
    modifier: Modifier = Modifier,
    tone: Tone = LocalColours.current.of(action),
    upright: Boolean = false,
    style: TextStyle = LocalLettering.current.of(action),
) {
    val ringed = LocalColours.current.night && action.weight == Weight.MAIN
    Ground(
        tone,
        modifier.alpha(if (action.open) 1f else ASLEEP).touch(action, tone.ink, send),
        Rounded,
        // By night no fill may be bright: what matters most has the strongest outline instead.
        edged = action.weight == Weight.PLAIN || action.weight == Weight.CAREFUL || ringed,
        pen = if (ringed) RING else 1.dp,
        align = Alignment.Center,
    ) {
        Readable {
            if (upright) Upright(action, style) else Level(action, style)
        }
    }
}

@Composable
private fun Level(action: Action, style: TextStyle) {
    Row(
        Modifier.padding(horizontal = 14.dp, vertical = 8.dp),
        Arrangement.spacedBy(12.dp),
        Alignment.CenterVertically,
    ) {
        if (action.sign != Sign.LATER) SignPicture(action.sign)
        Column(Modifier.weight(1f, fill = false)) { WordsOf(action, style, TextAlign.Unspecified) }
        if (action.sign == Sign.LATER) SignPicture(action.sign)
    }
}

@Composable
private fun Upright(action: Action, style: TextStyle) {
    Column(
        Modifier.padding(horizontal = 4.dp, vertical = 8.dp),
        Arrangement.spacedBy(2.dp, Alignment.CenterVertically),
        Alignment.CenterHorizontally,
    ) {
        SignPicture(action.sign)
        WordsOf(action, style, TextAlign.Center)
    }
}

@Composable
private fun WordsOf(action: Action, style: TextStyle, align: TextAlign) {
    val edge = LocalTone.current.edge
    val line = if (action.weight == Weight.QUIET && action.sign == Sign.NONE) Modifier.underlined(edge) else Modifier
    Words(action.label, style, line, align = align)
    Words(action.detail, LocalLettering.current.label, soft = true, align = align)
}

/** The water line under a word that can be tapped. */
internal fun Modifier.underlined(colour: Color) = drawBehind {
    val y = size.height + 2.dp.toPx()
    drawLine(colour, Offset(0f, y), Offset(size.width, y), 2.dp.toPx(), StrokeCap.Round)
}

private fun Lettering.of(action: Action): TextStyle = if (action.weight == Weight.MAIN) mainAction else this.action

/** The tone that an action's weight asks for. */
internal fun Colours.of(action: Action): Tone = when (action.weight) {
    Weight.MAIN -> main
    Weight.PLAIN -> if (action.chosen) chosen else plain
    Weight.QUIET -> page
    Weight.CAREFUL -> careful
}

/** The tone of an action that stands on other ground than the page. */
internal fun Colours.on(ground: Tone, action: Action): Tone = if (action.weight == Weight.QUIET) ground else of(action)

/** How thick the outline of the main action is by night. */
private val RING = 3.dp

/** How much is left to see of what cannot be tapped now. */
private const val ASLEEP = 0.45f
