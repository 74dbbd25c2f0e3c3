package drawwell.ui.places

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.heightIn
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.unit.dp
import drawwell.surface.Action
import drawwell.surface.Event
import drawwell.surface.Weight
import drawwell.ui.look.Measures
import drawwell.ui.parts.ActionButton
import drawwell.ui.parts.AddRow

/** The one thing to do, as wide as the page, and the others in a line under it. */
@Composable
internal fun FindingsActions(actions: List<Action>, send: (Event) -> Unit, modifier: Modifier = Modifier) {
    if (actions.isEmpty()) return
    val (main, others) = actions.partition { it.weight == Weight.MAIN }
    Column(modifier, Arrangement.spacedBy(Measures.apart)) {
        main.forEach { ActionButton(it, send, Modifier.fillMaxWidth().heightIn(min = 64.dp)) }
        AddRow(others, send)
    }
}
