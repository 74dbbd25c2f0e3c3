package drawwell.ui.caseload

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.unit.dp
import drawwell.surface.Event
import drawwell.surface.ListRow
import drawwell.surface.Sign
import drawwell.ui.look.LocalColours
import drawwell.ui.look.LocalLettering
import drawwell.ui.parts.Ground
import drawwell.ui.parts.Rounded
import drawwell.ui.parts.Words
import drawwell.ui.parts.touch
import drawwell.ui.pictures.SignPicture

/** A family in the list: its name, and each line that is said of it by itself. */
@Composable
internal fun FamilyRowView(row: ListRow, focus: Modifier, send: (Event) -> Unit) {
    val lettering = LocalLettering.current
    val opens = row.open ?: return
    val colours = LocalColours.current
    val tone = if (opens.chosen) colours.chosen else colours.sheet
    val acts = opens.copy(spoken = row.spoken.ifEmpty { opens.spoken })
    Ground(tone, Modifier.fillMaxWidth().then(focus).touch(acts, tone.ink, send, oneOf = true), Rounded) {
        Row(Modifier.fillMaxWidth().padding(horizontal = 14.dp, vertical = 12.dp), Arrangement.spacedBy(10.dp)) {
            Column(Modifier.weight(1f), Arrangement.spacedBy(5.dp)) {
                Words(row.title, lettering.action)
                if (row.detail.isNotEmpty()) row.detail.lines().forEach { Words(it, lettering.label) }
                if (row.aside.isNotEmpty()) Words(row.aside, lettering.label, soft = true)
            }
            if (opens.sign != Sign.NONE) SignPicture(opens.sign, size = 22.dp)
        }
    }
}
