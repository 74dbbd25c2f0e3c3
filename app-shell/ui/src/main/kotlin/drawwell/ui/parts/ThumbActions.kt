package drawwell.ui.parts

import androidx.compose.foundation.layout.IntrinsicSize
import androidx.compose.foundation.layout.fillMaxHeight
import androidx.compose.foundation.layout.height
import androidx.compose.foundation.layout.heightIn
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.unit.dp
import drawwell.surface.Action
import drawwell.surface.Event
import drawwell.surface.Sign
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.LocalReading
import drawwell.ui.look.largeType

/** What can be done with the one thing on the screen, in one row; in rows of two where type is large. Earlier stays before later in either hand. */
@Composable
internal fun ThumbActions(actions: List<Action>, send: (Event) -> Unit) {
    if (actions.isEmpty()) return
    if (largeType()) return MarkGrid(actions, send)
    val (times, others) = actions.partition { it.sign == Sign.EARLIER || it.sign == Sign.LATER }
    val turned = handDirection() != LocalReading.current
    HandRow(Modifier.height(IntrinsicSize.Min)) {
        ((if (turned) times.reversed() else times) + others).forEach {
            ActionButton(it, send, Modifier.weight(1f).fillMaxHeight().heightIn(min = 84.dp), upright = true, style = LocalLettering.current.small)
        }
    }
}
