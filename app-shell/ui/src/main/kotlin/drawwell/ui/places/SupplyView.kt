package drawwell.ui.places

import androidx.compose.runtime.Composable
import drawwell.surface.SupplyScreen
import drawwell.ui.look.LocalLettering
import drawwell.ui.parts.Figure
import drawwell.ui.parts.PageScreen
import drawwell.ui.parts.Pane
import drawwell.ui.parts.Words

/** How much milk is made, whether that holds, and since when not. */
@Composable
internal fun SupplyView(pane: Pane, supply: SupplyScreen) {
    val lettering = LocalLettering.current
    PageScreen(pane) {
        Figure(supply.headline, supply.figure, "")
        Words(supply.caption, lettering.body)
        supply.lines.forEach { Words(it, lettering.body, soft = true) }
    }
}
