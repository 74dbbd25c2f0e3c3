package drawwell.ui.forms

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.heightIn
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.remember
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.unit.dp
import drawwell.surface.Action
import drawwell.surface.Event
import drawwell.surface.FieldRow
import drawwell.surface.Secret
import drawwell.ui.Told
import drawwell.ui.parts.ActionButton

/**
 * A field that is sent with a tap and not by being left. What was typed lives as long as the page and is kept by
 * nothing: a passphrase outlives no program.
 */
@Composable
internal fun SentField(row: FieldRow, done: Action, trouble: Told?, send: (Event) -> Unit) {
    var typed by remember(row.value) { mutableStateOf(row.value) }
    val sends = { send(done.event.with(typed)) }
    Column(Modifier.fillMaxWidth(), Arrangement.spacedBy(12.dp)) {
        Hinted(row) { Typing(it, trouble, typed, { typed = it }, sends, Modifier.fillMaxWidth()) }
        if (trouble != null) FieldTrouble(trouble)
        ActionButton(done, { sends() }, Modifier.fillMaxWidth().heightIn(min = 64.dp))
    }
}

/** The event that the core put there, with what was typed. */
private fun Event.with(typed: String): Event = when (this) {
    is Event.EnterSecret -> copy(secret = Secret(typed))
    is Event.Enter -> copy(typed = typed)
    else -> this
}
