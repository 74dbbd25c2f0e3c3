package drawwell.ui.places

import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.unit.dp
import drawwell.surface.CheckScreen
import drawwell.ui.forms.FieldSheet
import drawwell.ui.look.Measures
import drawwell.ui.look.largeType
import drawwell.ui.parts.ActionButton
import drawwell.ui.parts.AddRow
import drawwell.ui.parts.ChoiceRowView
import drawwell.ui.parts.Heading
import drawwell.ui.parts.ListGroupView
import drawwell.ui.parts.NoticeView
import drawwell.ui.parts.Pane
import drawwell.ui.parts.ThumbScreen
import drawwell.ui.parts.scrolling
import drawwell.ui.pictures.DialPictureView

/** A check with a gauge: what to do above, and under the thumb the figure that is read. In large type that comes first. */
@Composable
internal fun CheckView(pane: Pane, check: CheckScreen) {
    ThumbScreen(
        pane,
        pinned = { ActionButton(check.done, pane.send, Modifier.fillMaxWidth().heightIn(min = 64.dp)) },
        reading = { picture ->
            Heading(pane.frame)
            CheckHead(check)
            if (!largeType()) CheckSteps(check, picture.scrolling())
        },
        controls = {
            check.asks.forEach { NoticeView(it, pane.send) }
            CheckNear(check, pane.send)
            FieldSheet(pane, listOf(check.reading), anew = check.readings.rows)
            if (largeType()) CheckSteps(check)
            check.at.forEach { ChoiceRowView(it, pane.send) }
            check.dial?.let { DialPictureView(it, Modifier.padding(top = Measures.rest)) }
            ListGroupView(check.readings, pane.send)
            FieldSheet(pane, check.setUp, Modifier.padding(top = Measures.rest))
            AddRow(pane.frame.terms, pane.send, Modifier.padding(top = Measures.rest))
        },
    )
}
