package drawwell.ui.places

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.height
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import drawwell.surface.DayScreen
import drawwell.surface.SideTotal
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.Measures
import drawwell.ui.parts.AddRow
import drawwell.ui.parts.DayChoiceView
import drawwell.ui.parts.EntryRowView
import drawwell.ui.parts.Figure
import drawwell.ui.parts.PageScreen
import drawwell.ui.parts.Pane
import drawwell.ui.parts.Words
import drawwell.ui.pictures.DayPictureView
import drawwell.ui.pictures.PartSwatch
import drawwell.ui.pictures.Sides

/** One local day. */
@Composable
internal fun DayView(pane: Pane, day: DayScreen) {
    val lettering = LocalLettering.current
    PageScreen(pane, pinned = { DayChoiceView(day, pane.send) }) {
        Figure(day.figure, day.caption, "")
        Sides(Modifier.padding(top = 8.dp)) { day.sides.forEach { Side(it, Modifier.weight(1f)) } }
        DayPictureView(day.picture, Modifier.height(190.dp).padding(top = 4.dp, bottom = 8.dp))
        Words(day.empty, lettering.body, soft = true)
        day.entries.forEach { EntryRowView(it, pane.send) }
        if (day.takenOut.isNotEmpty()) {
            Words(day.takenOutLabel, lettering.title, Modifier.padding(top = Measures.rest).semantics { heading() })
            day.takenOut.forEach { EntryRowView(it, pane.send) }
        }
        AddRow(day.add, pane.send, Modifier.padding(top = Measures.apart))
    }
}

@Composable
private fun Side(side: SideTotal, modifier: Modifier) {
    val lettering = LocalLettering.current
    Row(modifier.semantics(mergeDescendants = true) {}, Arrangement.spacedBy(8.dp), Alignment.Top) {
        PartSwatch(side.part, Modifier.padding(top = 2.dp))
        Column {
            Words(side.label, lettering.label, soft = true)
            Words(side.text, lettering.title)
            Words(side.note, lettering.tick, soft = true)
        }
    }
}
