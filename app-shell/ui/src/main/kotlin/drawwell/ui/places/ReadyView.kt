package drawwell.ui.places

import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.unit.dp
import drawwell.surface.Event
import drawwell.surface.ReadyScreen
import drawwell.ui.look.largeType
import drawwell.ui.parts.ActionButton
import drawwell.ui.parts.AddRow
import drawwell.ui.parts.Figure
import drawwell.ui.parts.Heading
import drawwell.ui.parts.Pane
import drawwell.ui.parts.SetUpRow
import drawwell.ui.parts.ThumbLine
import drawwell.ui.parts.ThumbScreen
import drawwell.ui.pictures.WaterColumns

/** Before a session: how long each side has rested, and what to start. */
@Composable
internal fun ReadyView(pane: Pane, ready: ReadyScreen) {
    // What leads elsewhere stands in the thumb's own row, which has no room for it where type is large.
    val flows = largeType()
    val (elsewhere, others) = ready.add.partition { it.event is Event.Go && !flows }
    ThumbScreen(
        pane,
        pinned = { ActionButton(ready.start, pane.send, Modifier.fillMaxWidth().heightIn(min = 72.dp)) },
        reading = { picture ->
            Heading(pane.frame)
            Figure(ready.figure, ready.caption, ready.spoken)
            WaterColumns(ready.columns, picture.padding(top = 12.dp))
        },
        beside = { elsewhere.forEach { ThumbLine(it, pane.send) } },
        controls = {
            ready.setUp.forEach { SetUpRow(it, pane.send) }
            AddRow(others, pane.send)
        },
    )
}
