package drawwell.ui.forms

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.clearAndSetSemantics
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import drawwell.surface.Event
import drawwell.surface.FieldKind
import drawwell.surface.FieldRow
import drawwell.ui.Told
import drawwell.ui.look.LocalColours
import drawwell.ui.look.LocalLettering
import drawwell.ui.parts.ActionButton
import drawwell.ui.parts.ChoiceChips
import drawwell.ui.parts.HandRow
import drawwell.ui.parts.Readable
import drawwell.ui.parts.Words
import drawwell.ui.parts.on

/** One field under its label, filled in the way of its kind. */
@Composable
internal fun FieldRowView(row: FieldRow, trouble: Told?, send: (Event) -> Unit, anew: Any? = null) {
    Column(Modifier.fillMaxWidth().padding(bottom = 6.dp), Arrangement.spacedBy(2.dp)) {
        FieldHead(row, send)
        val done = row.done
        if (done != null) SentField(row, done, trouble, send) else when (row.kind) {
            FieldKind.CHOICE -> ChoiceChips(row.options, send, Modifier.fillMaxWidth())
            FieldKind.NUMBER, FieldKind.TIME -> Hinted(row) { Stepped(it, trouble, send, anew) }
            FieldKind.DAY -> DayField(row, send)
            FieldKind.TEXT, FieldKind.LONG_TEXT, FieldKind.SECRET -> {
                if (row.options.isNotEmpty()) ChoiceChips(row.options, send, Modifier.fillMaxWidth().padding(bottom = 6.dp))
                TypedField(row, trouble, send, Modifier.fillMaxWidth(), anew)
            }
            FieldKind.FACT -> Words(
                row.value.ifEmpty { row.hint },
                LocalLettering.current.body,
                Modifier.semantics { contentDescription = row.spoken },
            )
        }
        if (trouble != null && done == null) FieldTrouble(trouble)
    }
}

/** The label, and how to empty the field. The voice hears the label from the field itself, but for choices. */
@Composable
private fun FieldHead(row: FieldRow, send: (Event) -> Unit) {
    val colours = LocalColours.current
    val silent = if (row.kind == FieldKind.CHOICE) Modifier else Modifier.clearAndSetSemantics {}
    HandRow(Modifier.heightIn(min = 40.dp)) {
        Readable {
            Words(row.label, LocalLettering.current.label, Modifier.weight(1f).then(silent), soft = true)
        }
        row.clear?.let { ActionButton(it, send, tone = colours.on(colours.sheet, it)) }
    }
}
