package drawwell.ui.places

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.FlowRow
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.unit.dp
import drawwell.surface.ListRow
import drawwell.ui.look.LocalLettering
import drawwell.ui.parts.Words

/** What was written down last, where the eye is when a thumb has just done so. */
@Composable
internal fun CheckRead(reading: ListRow) {
    val lettering = LocalLettering.current
    FlowRow(
        Modifier.fillMaxWidth().padding(top = 10.dp),
        Arrangement.spacedBy(12.dp),
        itemVerticalAlignment = Alignment.CenterVertically,
    ) {
        Words(reading.title, lettering.title)
        Words(reading.detail, lettering.label, soft = true)
    }
}
