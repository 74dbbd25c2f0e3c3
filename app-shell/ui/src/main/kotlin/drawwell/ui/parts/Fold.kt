package drawwell.ui.parts

import androidx.compose.foundation.clickable
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.draw.rotate
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.Role
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.role
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import drawwell.surface.Sign
import drawwell.ui.look.LocalColours
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.Measures
import drawwell.ui.pictures.SignPicture

/** A line that opens and closes what lies below it, or over it where it is `upward`. */
@Composable
internal fun Fold(tag: String, text: String, spoken: String, open: Boolean, modifier: Modifier = Modifier, upward: Boolean = false, turn: () -> Unit) {
    Ground(
        LocalColours.current.plain,
        modifier.heightIn(min = Measures.target).testTag(tag).clickable { turn() }.semantics {
            contentDescription = spoken
            role = Role.Button
        },
        Rounded,
        edged = true,
        align = Alignment.Center,
    ) {
        Row(Modifier.padding(horizontal = 14.dp, vertical = 8.dp), Arrangement.spacedBy(12.dp), Alignment.CenterVertically) {
            Words(text, LocalLettering.current.action, Modifier.weight(1f, fill = false))
            SignPicture(Sign.LATER, Modifier.rotate(if (open == upward) 90f else -90f), size = 18.dp)
        }
    }
}
