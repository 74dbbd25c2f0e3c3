package drawwell.ui.places

import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.clearAndSetSemantics
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.testTag
import androidx.compose.ui.unit.dp
import drawwell.surface.TonightScreen
import drawwell.ui.look.LocalLettering
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
        Words(tonight.headline, if (figure) lettering.caption else lettering.headline)
        if (figure) Figure(tonight.figure, "", "", large = lettering.hour)
        Words(tonight.caption, lettering.caption)
        Words(tonight.why, lettering.label, soft = true)
    }
}
