package drawwell.ui.places

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import drawwell.surface.CheckScreen
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.largeType
import drawwell.ui.parts.Words
import drawwell.ui.parts.scrolling

/** What is read now, and how, step by step; where the steps are longer than their room they scroll in it. */
@Composable
internal fun CheckSteps(check: CheckScreen, room: Modifier) {
    val lettering = LocalLettering.current
    Column(
        (if (largeType()) Modifier else room.scrolling()).fillMaxWidth().padding(top = 8.dp),
        Arrangement.spacedBy(6.dp),
    ) {
        Words(
            check.headline,
            lettering.headline,
            Modifier.testTag("check-head").semantics {
                contentDescription = check.spoken
                heading()
            },
        )
        check.steps.forEachIndexed { place, step ->
            Row(Modifier.semantics(mergeDescendants = true) {}, horizontalArrangement = Arrangement.spacedBy(10.dp)) {
                Words("${place + 1}", lettering.action, soft = true)
                Words(step, lettering.body)
            }
        }
        CheckRead(check.readings)
    }
}
