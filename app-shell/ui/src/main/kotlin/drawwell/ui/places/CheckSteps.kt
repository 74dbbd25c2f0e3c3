package drawwell.ui.places

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.clearAndSetSemantics
import androidx.compose.ui.unit.dp
import drawwell.surface.CheckScreen
import drawwell.ui.look.LocalLettering
import drawwell.ui.parts.Words

/** What to do, step by step, and what was written down last. The voice has heard it with the head and hears it with the list. */
@Composable
internal fun CheckSteps(check: CheckScreen, modifier: Modifier = Modifier) {
    val lettering = LocalLettering.current
    Column(modifier.fillMaxWidth().padding(top = 8.dp).clearAndSetSemantics {}, Arrangement.spacedBy(6.dp)) {
        check.steps.forEachIndexed { place, step ->
            Row(horizontalArrangement = Arrangement.spacedBy(10.dp)) {
                Words("${place + 1}", lettering.action, soft = true)
                Words(step, lettering.body)
            }
        }
        check.readings.rows.firstOrNull()?.let { CheckRead(it) }
    }
}
