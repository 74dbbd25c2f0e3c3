package drawwell.ui.parts

import androidx.compose.foundation.layout.size
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.draw.alpha
import androidx.compose.ui.unit.Dp
import androidx.compose.ui.unit.dp
import drawwell.surface.Action
import drawwell.surface.Event
import drawwell.surface.Sign
import drawwell.ui.look.LocalColours
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.Measures
import drawwell.ui.look.Tone
import drawwell.ui.pictures.SignPicture

/** An action told by its sign alone; its words are for the voice. */
@Composable
internal fun SignButton(
    action: Action,
    send: (Event) -> Unit,
    modifier: Modifier = Modifier,
    tone: Tone = LocalColours.current.of(action),
    size: Dp = Measures.target,
    held: Action? = null,
) {
    Ground(
        tone,
        modifier.alpha(if (action.open) 1f else 0.45f).size(size).touch(action, tone.ink, send, held = held),
        Rounded,
        edged = tone == LocalColours.current.plain,
        align = Alignment.Center,
    ) {
        if (action.sign == Sign.NONE) {
            Readable { OneLine(action.label, LocalLettering.current.action) }
        } else {
            SignPicture(action.sign, size = 26.dp)
        }
    }
}
