package drawwell.ui.parts

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import drawwell.surface.Event
import drawwell.surface.ListGroup
import drawwell.surface.ListRow
import drawwell.surface.Sign
import drawwell.ui.look.LocalColours
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.Measures
import drawwell.ui.pictures.SignPicture

/** Rows that belong together, under their title, and what can be added to them. */
@Composable
internal fun ListGroupView(group: ListGroup, send: (Event) -> Unit) {
    val lettering = LocalLettering.current
    if (group.title.isNotEmpty()) Words(group.title, lettering.title, Modifier.padding(top = Measures.rest).semantics { heading() })
    if (group.rows.isEmpty()) Words(group.empty, lettering.body, soft = true)
    group.rows.forEach { ListRowView(it, send) }
    AddRow(group.add, send)
}

/** One row; it opens where it has something to open. */
@Composable
internal fun ListRowView(row: ListRow, send: (Event) -> Unit) {
    val lettering = LocalLettering.current
    val tone = LocalColours.current.sheet
    val opens = row.open
    val acts = if (opens != null) {
        Modifier.touch(opens.copy(spoken = row.spoken.ifEmpty { opens.spoken }), tone.ink, send)
    } else {
        Modifier.semantics(mergeDescendants = true) { contentDescription = row.spoken }
    }
    Ground(tone, Modifier.fillMaxWidth().heightIn(min = Measures.target).then(acts), Rounded, align = Alignment.CenterStart) {
        Row(
            Modifier.fillMaxWidth().padding(horizontal = 14.dp, vertical = 10.dp),
            Arrangement.spacedBy(12.dp),
            Alignment.CenterVertically,
        ) {
            Column(Modifier.weight(1f)) {
                Words(row.title, lettering.action)
                Words(row.detail, lettering.label, soft = true)
                if (row.aside.isNotEmpty()) Words(row.aside, lettering.label, soft = true)
            }
            if (opens != null) SignPicture(opens.sign.takeIf { it != Sign.NONE } ?: Sign.LATER, size = 20.dp)
        }
    }
}
