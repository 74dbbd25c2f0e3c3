package drawwell.ui.places

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.clearAndSetSemantics
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.testTag
import androidx.compose.ui.unit.dp
import drawwell.surface.ChangeNote
import drawwell.surface.Event
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.Measures
import drawwell.ui.parts.ListRowView
import drawwell.ui.parts.Words

/** When it changed and how much, and what else changed then. */
@Composable
internal fun SupplyChange(change: ChangeNote, send: (Event) -> Unit) {
    val lettering = LocalLettering.current
    Column(
        Modifier.fillMaxWidth().padding(top = Measures.rest).clearAndSetSemantics {
            contentDescription = change.spoken
            testTag = change.key
            heading()
        },
        Arrangement.spacedBy(4.dp),
    ) {
        Words(change.title, lettering.title)
        Words(change.detail, lettering.body)
        Words(change.besideLabel, lettering.label, soft = true)
    }
    change.beside.forEach { ListRowView(it, send) }
}
