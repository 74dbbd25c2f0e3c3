package drawwell.ui.places

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.BoxWithConstraints
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.PaddingValues
import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import drawwell.surface.QuestionScreen
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.Measures
import drawwell.ui.parts.ActionButton
import drawwell.ui.parts.Foot
import drawwell.ui.parts.Heading
import drawwell.ui.parts.MarkGrid
import drawwell.ui.parts.NoticeView
import drawwell.ui.parts.Pane
import drawwell.ui.parts.Scrolling
import drawwell.ui.parts.Trouble
import drawwell.ui.parts.Words

/** One question, answered with one tap. */
@Composable
internal fun QuestionView(pane: Pane, question: QuestionScreen) {
    val lettering = LocalLettering.current
    Column(Modifier.fillMaxSize()) {
        // The answers lie low, where the thumb is.
        BoxWithConstraints(Modifier.weight(1f)) {
            val room = maxHeight - EDGE * 2
            Scrolling(Modifier.fillMaxSize(), PaddingValues(Measures.margin, EDGE)) {
                Column(Modifier.fillMaxWidth().heightIn(min = room), Arrangement.SpaceBetween) {
                    Column(verticalArrangement = Arrangement.spacedBy(Measures.apart)) {
                        Heading(pane.frame)
                        pane.frame.notices.forEach { NoticeView(it, pane.send) }
                        Words(question.headline, lettering.headline, Modifier.padding(top = Measures.rest).semantics { heading() })
                        Words(question.line, lettering.body, Modifier.padding(bottom = Measures.rest), soft = true)
                    }
                    MarkGrid(question.answers, pane.send)
                }
            }
        }
        Trouble(pane)
        Foot(pane, pinned = { question.skip?.let { ActionButton(it, pane.send, Modifier.fillMaxWidth()) } })
    }
}

private val EDGE = 12.dp
