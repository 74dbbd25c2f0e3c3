package drawwell.ui.parts

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.draw.alpha
import androidx.compose.ui.text.style.TextAlign
import androidx.compose.ui.unit.dp
import drawwell.surface.Action
import drawwell.surface.Event
import drawwell.ui.look.LocalColours
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.Measures
import drawwell.ui.pictures.SignPicture

/** Acts where type is large, two abreast: a sign and one line. What more there is to say of them is the voice's. */
@Composable
internal fun SmallGrid(actions: List<Action>, send: (Event) -> Unit) {
    Column(verticalArrangement = Arrangement.spacedBy(Measures.apart)) {
        actions.chunked(2).forEach { row ->
            HandRow { row.forEach { SmallAction(it, send, Modifier.weight(1f)) } }
        }
    }
}

@Composable
private fun SmallAction(action: Action, send: (Event) -> Unit, modifier: Modifier) {
    val tone = LocalColours.current.of(action)
    Ground(
        tone,
        modifier.heightIn(min = Measures.target).alpha(if (action.open) 1f else 0.45f).touch(action, tone.ink, send),
        Rounded,
        edged = true,
        align = Alignment.Center,
    ) {
        Readable {
            Column(Modifier.fillMaxWidth().padding(6.dp), Arrangement.spacedBy(2.dp), Alignment.CenterHorizontally) {
                SignPicture(action.sign)
                OneLine(action.label, LocalLettering.current.small, align = TextAlign.Center)
            }
        }
    }
}
