package drawwell.ui.parts

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.IntrinsicSize
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxHeight
import androidx.compose.foundation.layout.height
import androidx.compose.foundation.layout.heightIn
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.unit.dp
import drawwell.surface.Action
import drawwell.surface.Event
import drawwell.surface.Sign
import drawwell.ui.look.Measures
import drawwell.ui.look.largeType

/** What can be done with the one thing on the screen, in one row; in rows of two where type is large. Earlier stays before later in either hand. */
@Composable
internal fun ThumbActions(actions: List<Action>, send: (Event) -> Unit) {
    if (actions.isEmpty()) return
    if (largeType()) return MarkGrid(actions, send)
    val (times, others) = actions.partition { it.sign == Sign.EARLIER || it.sign == Sign.LATER }
    HandRow(Modifier.height(IntrinsicSize.Min)) {
        if (times.isNotEmpty()) {
            Row(Modifier.weight(times.size.toFloat()).fillMaxHeight(), Arrangement.spacedBy(Measures.apart)) {
                Readable { times.forEach { ThumbAction(it, send, Modifier.weight(1f)) } }
            }
        }
        others.forEach { ThumbAction(it, send, Modifier.weight(1f)) }
    }
}

@Composable
private fun ThumbAction(action: Action, send: (Event) -> Unit, modifier: Modifier) =
    ActionButton(action, send, modifier.fillMaxHeight().heightIn(min = 84.dp), upright = true)
