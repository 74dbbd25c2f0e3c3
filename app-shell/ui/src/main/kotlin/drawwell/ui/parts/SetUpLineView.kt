package drawwell.ui.parts

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.saveable.rememberSaveable
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import drawwell.surface.Event
import drawwell.surface.SetUpLine
import drawwell.ui.look.Measures

/** How the next session is done, in a line; a tap opens the rows that change it. */
@Composable
internal fun SetUpLineView(line: SetUpLine, send: (Event) -> Unit) {
    var open by rememberSaveable { mutableStateOf(line.open) }
    Column(Modifier.fillMaxWidth(), Arrangement.spacedBy(Measures.apart)) {
        Fold("set-up", line.text, if (open) line.spokenOpen else line.spoken, open) { open = !open }
        if (open) line.rows.forEach { SetUpRow(it, send) }
    }
}
