package drawwell.ui.parts

import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import drawwell.surface.Action
import drawwell.surface.Event

/** Other things to do from here, in a line that wraps; turned round for the left hand. */
@Composable
internal fun AddRow(actions: List<Action>, send: (Event) -> Unit, modifier: Modifier = Modifier) {
    if (actions.isEmpty()) return
    HandFlow(modifier.fillMaxWidth()) {
        actions.forEach { ActionButton(it, send) }
    }
}
