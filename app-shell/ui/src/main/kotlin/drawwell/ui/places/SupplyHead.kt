package drawwell.ui.places

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.clearAndSetSemantics
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.testTag
import androidx.compose.ui.unit.dp
import drawwell.surface.SupplyScreen
import drawwell.ui.look.LocalLettering
import drawwell.ui.parts.Figure
import drawwell.ui.parts.Words

/** The word of the moment, large; the figure under it, and what it rests on. */
@Composable
internal fun SupplyHead(supply: SupplyScreen) {
    val lettering = LocalLettering.current
    Column(
        Modifier.fillMaxWidth().clearAndSetSemantics {
            contentDescription = supply.spoken
            testTag = "supply-head"
        },
        Arrangement.spacedBy(2.dp),
    ) {
        Figure(supply.headline, "", "", large = lettering.word)
        Words(supply.figure, lettering.headline)
        Words(supply.caption, lettering.caption, soft = true)
        supply.lines.forEach { Words(it, lettering.body, Modifier.padding(top = 4.dp)) }
    }
}
