package drawwell.ui.parts

import androidx.compose.foundation.clickable
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.saveable.rememberSaveable
import androidx.compose.runtime.setValue
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.draw.rotate
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.Role
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.role
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import drawwell.surface.Event
import drawwell.surface.SetUpLine
import drawwell.surface.Sign
import drawwell.ui.look.LocalColours
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.Measures
import drawwell.ui.pictures.SignPicture

/** How the next session is done, in a line; a tap opens the rows that change it. */
@Composable
internal fun SetUpLineView(line: SetUpLine, send: (Event) -> Unit) {
    var open by rememberSaveable { mutableStateOf(line.open) }
    Column(Modifier.fillMaxWidth(), Arrangement.spacedBy(Measures.apart)) {
        Ground(
            LocalColours.current.plain,
            Modifier.heightIn(min = Measures.target).testTag("set-up").clickable { open = !open }.semantics {
                contentDescription = if (open) line.spokenOpen else line.spoken
                role = Role.Button
            },
            Rounded,
            edged = true,
            align = Alignment.Center,
        ) {
            Row(
                Modifier.padding(horizontal = 14.dp, vertical = 8.dp),
                Arrangement.spacedBy(12.dp),
                Alignment.CenterVertically,
            ) {
                Words(line.text, LocalLettering.current.action, Modifier.weight(1f, fill = false))
                SignPicture(Sign.LATER, Modifier.rotate(if (open) -90f else 90f), size = 18.dp)
            }
        }
        if (open) line.rows.forEach { SetUpRow(it, send) }
    }
}
