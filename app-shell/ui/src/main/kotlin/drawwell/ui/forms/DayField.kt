package drawwell.ui.forms

import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.text.style.TextAlign
import androidx.compose.ui.unit.dp
import drawwell.surface.Event
import drawwell.surface.FieldRow
import drawwell.ui.look.LocalLettering
import drawwell.ui.parts.ChoiceChips
import drawwell.ui.parts.HandRow
import drawwell.ui.parts.Readable
import drawwell.ui.parts.SignButton
import drawwell.ui.parts.Words

/** A day: those that are near by their names, and any other a step at a time. Nobody types a date. */
@Composable
internal fun DayField(row: FieldRow, send: (Event) -> Unit) {
    ChoiceChips(row.options, send, Modifier.fillMaxWidth().padding(bottom = 6.dp))
    HandRow {
        row.less?.let { SignButton(it, send) }
        Readable {
            Words(
                row.value,
                LocalLettering.current.body,
                Modifier.weight(1f).semantics { contentDescription = row.spoken },
                align = TextAlign.Center,
            )
        }
        row.more?.let { SignButton(it, send) }
    }
}
