package drawwell.ui.forms

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Row
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import drawwell.surface.Event
import drawwell.surface.FieldRow
import drawwell.surface.Sign
import drawwell.ui.Told
import drawwell.ui.look.LocalColours
import drawwell.ui.look.LocalLettering
import drawwell.ui.parts.ActionButton
import drawwell.ui.parts.Words
import drawwell.ui.parts.on
import drawwell.ui.pictures.SignPicture
import androidx.compose.ui.unit.dp

/** Under a field: what is the matter with what was typed, and how to empty it. */
@Composable
internal fun FieldFoot(row: FieldRow, trouble: Told?, send: (Event) -> Unit) {
    val colours = LocalColours.current
    if (trouble != null) {
        Row(horizontalArrangement = Arrangement.spacedBy(8.dp), verticalAlignment = Alignment.CenterVertically) {
            SignPicture(Sign.CAUTION, size = 20.dp)
            Words(trouble.whatToDo, LocalLettering.current.label)
        }
    }
    row.clear?.let { ActionButton(it, send, tone = colours.on(colours.sheet, it)) }
}
