package drawwell.ui.places

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.FlowRow
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.clearAndSetSemantics
import androidx.compose.ui.unit.dp
import drawwell.surface.ListGroup
import drawwell.ui.look.LocalLettering
import drawwell.ui.parts.Words

/** What was written down, where the eye is when a thumb has just done so. The voice hears it from the list itself. */
@Composable
internal fun CheckRead(readings: ListGroup) {
    val lettering = LocalLettering.current
    if (readings.rows.isEmpty()) return
    FlowRow(
        Modifier.fillMaxWidth().padding(top = 10.dp).clearAndSetSemantics {},
        Arrangement.spacedBy(14.dp),
        Arrangement.spacedBy(2.dp),
    ) {
        Words(readings.title, lettering.label, Modifier.padding(top = 4.dp), soft = true)
        readings.rows.forEach { Words(it.title, lettering.title) }
    }
}
