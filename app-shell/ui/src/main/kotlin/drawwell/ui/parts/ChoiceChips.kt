package drawwell.ui.parts

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.draw.alpha
import androidx.compose.ui.draw.drawBehind
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.graphics.StrokeCap
import androidx.compose.ui.semantics.selectableGroup
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.text.style.TextAlign
import androidx.compose.ui.unit.dp
import drawwell.surface.Action
import drawwell.surface.Event
import drawwell.ui.look.LocalColours
import drawwell.ui.look.LocalLettering
import drawwell.ui.pictures.SignPicture

/** Several answers of which one or more hold; those wrap where they do not fit. */
@Composable
internal fun ChoiceChips(options: List<Action>, send: (Event) -> Unit, modifier: Modifier = Modifier) {
    HandFlow(modifier.semantics { selectableGroup() }) {
        options.forEach { Chip(it, send) }
    }
}

/** The chosen answer holds water: it is filled, and a line stands in it. */
@Composable
private fun Chip(action: Action, send: (Event) -> Unit) {
    val colours = LocalColours.current
    val tone = if (action.chosen) colours.chosen else colours.sheet
    Ground(
        tone,
        Modifier.alpha(if (action.open) 1f else 0.45f).touch(action, tone.ink, send, oneOf = true),
        Rounded,
        edged = true,
        align = Alignment.Center,
    ) {
        Readable {
            val line = if (action.chosen) Modifier.drawBehind {
                val y = size.height - 2.dp.toPx()
                drawLine(tone.edge, Offset(2.dp.toPx(), y), Offset(size.width - 2.dp.toPx(), y), 2.5.dp.toPx(), StrokeCap.Round)
            } else Modifier
            Row(
                Modifier.padding(horizontal = 14.dp, vertical = 6.dp).then(line).padding(bottom = 5.dp, top = 3.dp),
                Arrangement.spacedBy(8.dp),
                Alignment.CenterVertically,
            ) {
                SignPicture(action.sign, size = 20.dp)
                Column(horizontalAlignment = Alignment.CenterHorizontally) {
                    Words(action.label, LocalLettering.current.action, align = TextAlign.Center)
                    Words(action.detail, LocalLettering.current.tick, soft = true, align = TextAlign.Center)
                }
            }
        }
    }
}
