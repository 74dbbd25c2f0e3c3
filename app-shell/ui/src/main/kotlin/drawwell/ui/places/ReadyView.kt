package drawwell.ui.places

import androidx.compose.foundation.layout.IntrinsicSize
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxHeight
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.height
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.unit.dp
import drawwell.surface.ReadyScreen
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.largeType
import drawwell.ui.parts.ActionButton
import drawwell.ui.parts.Figure
import drawwell.ui.parts.HandRow
import drawwell.ui.parts.Heading
import drawwell.ui.parts.Pane
import drawwell.ui.parts.SetUpLineView
import drawwell.ui.parts.SignButton
import drawwell.ui.parts.ThumbActions
import drawwell.ui.parts.ThumbLine
import drawwell.ui.parts.ThumbScreen
import drawwell.ui.parts.Words
import drawwell.ui.pictures.RestClocks

/** Before a session: how long each side has rested, and what to start. */
@Composable
internal fun ReadyView(pane: Pane, ready: ReadyScreen) {
    // What leads elsewhere stands in the thumb's own row, which has no room for it where type is large.
    val flows = largeType()
    ThumbScreen(
        pane,
        pinned = {
            HandRow(Modifier.height(IntrinsicSize.Min)) {
                if (!flows) ActionButton(ready.justPumped, pane.send, Modifier.weight(2f).fillMaxHeight())
                ActionButton(ready.start, pane.send, Modifier.weight(3f).fillMaxHeight().heightIn(min = 72.dp))
            }
        },
        reading = {
            Row {
                Heading(pane.frame, Modifier.weight(1f))
                SignButton(ready.settings, pane.send)
            }
            Figure(ready.figure, ready.caption, ready.spoken)
        },
        picture = { RestClocks(ready.rests, it.padding(top = 12.dp)) },
        beside = { if (!flows) ThumbLine(ready.today, pane.send) },
        controls = {
            Words(ready.lead, LocalLettering.current.body)
            if (flows) listOf(ready.justPumped, ready.today).forEach { ActionButton(it, pane.send, Modifier.fillMaxWidth()) }
            SetUpLineView(ready.setUp, pane.send)
            ThumbActions(ready.add, pane.send)
        },
    )
}
