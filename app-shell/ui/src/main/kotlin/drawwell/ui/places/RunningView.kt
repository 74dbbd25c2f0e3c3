package drawwell.ui.places

import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.ui.Modifier
import androidx.compose.ui.unit.dp
import drawwell.surface.RunningScreen
import drawwell.ui.look.LocalColours
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.LocalTone
import drawwell.ui.parts.ActionButton
import drawwell.ui.parts.ChoiceRowView
import drawwell.ui.parts.DialView
import drawwell.ui.parts.Figure
import drawwell.ui.parts.GrownLess
import drawwell.ui.parts.Heading
import drawwell.ui.parts.MarkGrid
import drawwell.ui.parts.Pane
import drawwell.ui.parts.SetUpRow
import drawwell.ui.parts.ThumbScreen
import drawwell.ui.parts.Words
import drawwell.ui.pictures.StripPicture

/** While a session runs. */
@Composable
internal fun RunningView(pane: Pane, running: RunningScreen) {
    val colours = LocalColours.current
    ThumbScreen(
        pane,
        pinned = {
            ActionButton(running.finish, pane.send, Modifier.fillMaxWidth().heightIn(min = 64.dp), colours.now)
        },
        reading = {
            Heading(pane.frame)
            CompositionLocalProvider(LocalTone provides colours.running) {
                Figure(running.figure, running.caption, running.spoken)
            }
        },
        picture = {
            StripPicture(running.strip, it.padding(top = 10.dp), running = true)
            Words(running.strip.key, LocalLettering.current.tick, soft = true)
        },
        controls = {
            Words(running.lead, LocalLettering.current.body)
            GrownLess { running.dials.forEach { DialView(it, pane.send) } }
            // A row of many goes under its label, over the whole width.
            running.pain.forEach { if (it.options.size > FEW) ChoiceRowView(it, pane.send) else SetUpRow(it, pane.send) }
            GrownLess { MarkGrid(running.marks, pane.send) }
        },
    )
}

private const val FEW = 4
