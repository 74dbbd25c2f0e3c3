package drawwell.ui.parts

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.Spacer
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.unit.dp
import drawwell.surface.Action
import drawwell.surface.Event
import drawwell.surface.Frame
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.LocalTone
import drawwell.ui.look.Measures
import drawwell.ui.pictures.SignPicture

/** Back, and what can be taken back, where the thumb is. Keeps its place when there is nothing in it. */
@Composable
internal fun ThumbRow(frame: Frame, send: (Event) -> Unit) {
    HandRow(Modifier.heightIn(min = Measures.target)) {
        frame.back?.let { Line(it, send, Modifier) }
        Spacer(Modifier.weight(1f))
        frame.redo?.let { Line(it, send, Modifier) }
        frame.undo?.let { Line(it, send, Modifier) }
    }
}

@Composable
private fun Line(action: Action, send: (Event) -> Unit, modifier: Modifier) {
    Box(modifier.touch(action, LocalTone.current.ink, send), contentAlignment = Alignment.Center) {
        Readable {
            Row(Modifier.padding(horizontal = 12.dp), Arrangement.spacedBy(8.dp), Alignment.CenterVertically) {
                SignPicture(action.sign, size = 22.dp)
                Column {
                    Words(action.label, LocalLettering.current.label)
                    Words(action.detail, LocalLettering.current.tick, soft = true)
                }
            }
        }
    }
}
