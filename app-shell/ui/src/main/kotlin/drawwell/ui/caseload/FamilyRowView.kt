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
import drawwell.surface.Weight
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
    val leads = opens.weight == Weight.MAIN
    val tone = when {
        opens.chosen -> colours.chosen
        leads -> colours.main
        else -> colours.sheet
    }
    val acts = opens.copy(spoken = row.spoken.ifEmpty { opens.spoken })
    Ground(
        tone,
        Modifier.fillMaxWidth().then(focus).touch(acts, tone.ink, send, oneOf = true),
        Rounded,
        // By night no ground is bright: the outline leads there. What is open has one beside such a row by day.
        edged = leads && (colours.night || opens.chosen),
        pen = RING,
    ) {
        Row(Modifier.fillMaxWidth().padding(horizontal = 14.dp, vertical = if (leads) 16.dp else 12.dp), Arrangement.spacedBy(10.dp)) {
            Column(Modifier.weight(1f), Arrangement.spacedBy(5.dp)) {
                Words(row.title, if (leads) lettering.value else lettering.action)
                if (row.detail.isNotEmpty()) row.detail.lines().forEachIndexed { index, line ->
                    Words(line, if (leads && index == 0) lettering.action else lettering.label)
                }
                if (row.aside.isNotEmpty()) Words(row.aside, lettering.label, soft = true)
            }
            if (opens.sign != Sign.NONE) SignPicture(opens.sign, size = if (leads) 32.dp else 22.dp)
        }
    }
}

/** How thick the outline of a row is that leads. */
private val RING = 3.dp
