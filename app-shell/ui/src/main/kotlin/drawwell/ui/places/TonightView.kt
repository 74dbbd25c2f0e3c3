package drawwell.ui.places

import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.runtime.key
import androidx.compose.ui.Modifier
import androidx.compose.ui.unit.dp
import drawwell.surface.TonightScreen
import drawwell.ui.look.Measures
import drawwell.ui.look.largeType
import drawwell.ui.parts.ActionButton
import drawwell.ui.parts.AddRow
import drawwell.ui.parts.ChoiceRowView
import drawwell.ui.parts.Heading
import drawwell.ui.parts.ListGroupView
import drawwell.ui.parts.NoticeView
import drawwell.ui.parts.Pane
import drawwell.ui.parts.SmallGrid
import drawwell.ui.parts.ThumbActions
import drawwell.ui.parts.ThumbScreen
import drawwell.ui.pictures.NightPictureView

/** When to express next, and what the night holds. */
@Composable
internal fun TonightView(pane: Pane, tonight: TonightScreen) {
    // Where type is large, what can be done comes before the picture: it is seen without scrolling.
    val flows = largeType()
    ThumbScreen(
        pane,
        pinned = { tonight.start?.let { ActionButton(it, pane.send, Modifier.fillMaxWidth().heightIn(min = 72.dp)) } },
        reading = { picture ->
            Heading(pane.frame)
            TonightHead(tonight)
            if (!flows) tonight.night?.let { NightPictureView(it, picture.padding(top = Measures.apart)) }
        },
        controls = {
            if (flows) {
                SmallGrid(tonight.actions, pane.send)
                tonight.night?.let { NightPictureView(it, Modifier.padding(top = Measures.apart)) }
            } else {
                ThumbActions(tonight.actions, pane.send)
            }
            tonight.choices.forEach { ChoiceRowView(it, pane.send) }
            NightFigures(tonight.figures)
            tonight.asks.forEach { NoticeView(it, pane.send) }
            ListGroupView(tonight.times, pane.send)
            tonight.sections.forEach { key(it.key) { FindingsSection(pane, it) } }
            AddRow(pane.frame.terms, pane.send, Modifier.padding(top = Measures.rest))
        },
        eyes = if (tonight.night == null) Measures.EYES else Measures.EYES_WIDE,
        most = MOST,
        flowing = Modifier,
    )
}

private val MOST = 580.dp
