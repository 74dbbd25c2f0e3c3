package drawwell.ui.places

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.text.style.TextAlign
import androidx.compose.ui.unit.dp
import drawwell.surface.SheetRow
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.largeType
import drawwell.ui.parts.Words

/** A label with its value at the end of the line, in large type under it; and what is said of both. */
@Composable
internal fun SheetRowView(row: SheetRow) {
    val lettering = LocalLettering.current
    Column(Modifier.fillMaxWidth().semantics(mergeDescendants = true) {}) {
        if (largeType()) {
            Words(row.label, lettering.body)
            Words(row.value, lettering.action)
        } else {
            Row(Modifier.fillMaxWidth(), Arrangement.spacedBy(12.dp)) {
                Words(row.label, lettering.body, Modifier.weight(1f))
                Words(row.value, lettering.action, Modifier.weight(1f, fill = false), align = TextAlign.End)
            }
        }
        Words(row.note, lettering.label, soft = true)
    }
}
