package drawwell.ui.parts

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.unit.dp
import drawwell.surface.ChoiceRow
import drawwell.surface.Event
import drawwell.ui.look.LocalLettering

/** Choices under their label. */
@Composable
internal fun ChoiceRowView(row: ChoiceRow, send: (Event) -> Unit, modifier: Modifier = Modifier) {
    Column(modifier.fillMaxWidth(), Arrangement.spacedBy(4.dp)) {
        Words(row.label, LocalLettering.current.label, soft = true)
        ChoiceChips(row.options, send, Modifier.fillMaxWidth())
    }
}
