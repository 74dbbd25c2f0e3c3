package drawwell.ui.places

import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.layout.layout
import androidx.compose.ui.semantics.clearAndSetSemantics
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.testTag
import androidx.compose.ui.unit.dp
import drawwell.surface.TonightScreen
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.largeType
import drawwell.ui.parts.Figure
import drawwell.ui.parts.Words

/** The time of the next session, larger than all else; in how long, and why then. Where there is none, what has to be known first. */
@Composable
internal fun TonightHead(tonight: TonightScreen) {
    val lettering = LocalLettering.current
    Column(
        Modifier.fillMaxWidth().padding(top = 4.dp).clearAndSetSemantics {
            contentDescription = tonight.spoken
            testTag = "tonight-head"
        },
    ) {
        val figure = tonight.figure.isNotEmpty()
        Words(tonight.headline, if (figure) lettering.caption else if (largeType()) lettering.headline else lettering.amount)
        if (figure) Figure(tonight.figure, "", "", Modifier.withoutAir(), lettering.hour)
        Words(tonight.caption, lettering.caption)
        Words(tonight.why, lettering.label, soft = true)
    }
}

/** Figures this large have more air above and below them than they need: room that the night has use for. */
private fun Modifier.withoutAir() = layout { measurable, constraints ->
    val placed = measurable.measure(constraints)
    val tall = (placed.height * KEPT).toInt()
    layout(placed.width, tall) { placed.place(0, (tall - placed.height) / 2) }
}

/** Of the height of a line, what its figures take and a little more. */
private const val KEPT = 0.74f
