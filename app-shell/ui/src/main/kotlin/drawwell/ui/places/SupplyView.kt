package drawwell.ui.places

import androidx.compose.foundation.layout.height
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import drawwell.surface.SupplyScreen
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.Measures
import drawwell.ui.parts.AddRow
import drawwell.ui.parts.ChoiceChips
import drawwell.ui.parts.ListGroupView
import drawwell.ui.parts.NoticeView
import drawwell.ui.parts.PageScreen
import drawwell.ui.parts.Pane
import drawwell.ui.parts.Words
import drawwell.ui.pictures.HoursPictureView
import drawwell.ui.pictures.WeeksPictureView

/** How much milk is made, whether that holds, and since when not. */
@Composable
internal fun SupplyView(pane: Pane, supply: SupplyScreen) {
    val lettering = LocalLettering.current
    PageScreen(pane) {
        SupplyHead(supply)
        if (supply.weeks.bars.isNotEmpty()) {
            WeeksPictureView(supply.weeks, "weeks-picture", Modifier.padding(top = Measures.apart).height(220.dp))
            if (supply.weeks.legend.isNotEmpty()) Words(supply.weeks.legend, lettering.tick, soft = true)
        }
        if (supply.behind != null) ChoiceChips(supply.spans.options, pane.send, Modifier.padding(top = Measures.apart))
        supply.asks.forEach { NoticeView(it, pane.send) }
        supply.changes.forEach { SupplyChange(it, pane.send) }
        SupplySides(supply.sides)
        if (supply.hours.bars.isNotEmpty()) {
            Words(supply.hours.title, lettering.title, Modifier.padding(top = Measures.rest).semantics { heading() })
            HoursPictureView(supply.hours, Modifier.height(170.dp))
            Words(supply.hours.legend, lettering.tick, soft = true)
        }
        ListGroupView(supply.parts, pane.send)
        ListGroupView(supply.against, pane.send)
        AddRow(listOfNotNull(supply.behind, supply.kept), pane.send, Modifier.padding(top = Measures.apart))
    }
}
