package drawwell.ui.forms

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Row
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.unit.dp
import drawwell.surface.Sign
import drawwell.ui.Told
import drawwell.ui.look.LocalLettering
import drawwell.ui.parts.Words
import drawwell.ui.pictures.SignPicture

/** Under a field: what to do about what was typed in it. */
@Composable
internal fun FieldTrouble(trouble: Told) {
    Row(horizontalArrangement = Arrangement.spacedBy(8.dp), verticalAlignment = Alignment.CenterVertically) {
        SignPicture(Sign.CAUTION, size = 20.dp)
        Words(trouble.whatToDo, LocalLettering.current.label)
    }
}
