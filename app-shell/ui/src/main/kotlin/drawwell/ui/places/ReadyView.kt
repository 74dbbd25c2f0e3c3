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
import drawwell.ui.look.largeType
import drawwell.ui.parts.ActionButton
import drawwell.ui.parts.AddRow
import drawwell.ui.parts.Figure
import drawwell.ui.parts.HandRow
import drawwell.ui.parts.Heading
import drawwell.ui.parts.Pane
import drawwell.ui.parts.SetUpLineView
import drawwell.ui.parts.SignButton
import drawwell.ui.parts.ThumbLine
import drawwell.ui.parts.ThumbScreen
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
                ActionButton(ready.justPumped, pane.send, Modifier.weight(2f).fillMaxHeight())
                ActionButton(ready.start, pane.send, Modifier.weight(3f).fillMaxHeight().heightIn(min = 72.dp))
            }
        },
        reading = { picture ->
            Row {
                Heading(pane.frame, Modifier.weight(1f))
                SignButton(ready.settings, pane.send)
            }
            Figure(ready.figure, ready.caption, ready.spoken)
            RestClocks(ready.rests, picture.padding(top = 12.dp))
        },
        beside = { if (!flows) ThumbLine(ready.today, pane.send) },
        controls = {
            if (flows) ActionButton(ready.today, pane.send, Modifier.fillMaxWidth())
            SetUpLineView(ready.setUp, pane.send)
            AddRow(ready.add, pane.send)
        },
    )
}
