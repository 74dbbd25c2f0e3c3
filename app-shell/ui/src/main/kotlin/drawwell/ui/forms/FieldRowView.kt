package drawwell.ui.forms

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import drawwell.surface.Event
import drawwell.surface.FieldKind
import drawwell.surface.FieldRow
import drawwell.ui.Told
import drawwell.ui.look.LocalLettering
import drawwell.ui.parts.ChoiceChips
import drawwell.ui.parts.Words

/** One field under its label, filled in the way of its kind. */
@Composable
internal fun FieldRowView(row: FieldRow, trouble: Told?, send: (Event) -> Unit) {
    val lettering = LocalLettering.current
    Column(Modifier.fillMaxWidth(), Arrangement.spacedBy(6.dp)) {
        Words(row.label, lettering.label, soft = true)
        when (row.kind) {
            FieldKind.CHOICE -> Chosen(row, send)
            FieldKind.NUMBER, FieldKind.TIME -> Stepped(row, trouble, send)
            FieldKind.TEXT, FieldKind.LONG_TEXT -> TypedField(row, trouble, send, Modifier.fillMaxWidth())
            FieldKind.FACT -> Words(
                row.value.ifEmpty { row.hint },
                lettering.body,
                Modifier.semantics { contentDescription = row.spoken },
            )
        }
        FieldFoot(row, trouble, send)
    }
}

@Composable
private fun Chosen(row: FieldRow, send: (Event) -> Unit) {
    ChoiceChips(row.options, send, Modifier.fillMaxWidth())
}
