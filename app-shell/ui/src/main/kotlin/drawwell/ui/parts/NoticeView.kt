package drawwell.ui.parts

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.LiveRegionMode
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.liveRegion
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import drawwell.surface.Event
import drawwell.surface.Notice
import drawwell.surface.Sign
import drawwell.surface.Tone
import drawwell.ui.look.LocalColours
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.largeType
import drawwell.ui.pictures.SignPicture

/** A quiet line, with what can be done about it: beside it where that is one thing, below it where it is more. */
@Composable
internal fun NoticeView(notice: Notice, send: (Event) -> Unit, modifier: Modifier = Modifier) {
    val colours = LocalColours.current
    val ground = if (notice.tone == Tone.CAUTION) colours.caution else colours.sheet
    val beside = notice.actions.size == 1 && !largeType()
    Ground(ground, modifier.fillMaxWidth().testTag(notice.key), Rounded) {
        Column {
            HandRow {
                Readable {
                    Said(notice, Modifier.weight(1f).padding(start = 14.dp, end = 14.dp, top = 8.dp, bottom = 8.dp))
                }
                if (beside) notice.actions.forEach { ActionButton(it, send, tone = colours.on(ground, it)) }
            }
            if (!beside && notice.actions.isNotEmpty()) {
                HandFlow(Modifier.padding(start = 8.dp, end = 8.dp, bottom = 8.dp)) {
                    notice.actions.forEach { ActionButton(it, send, tone = colours.on(ground, it)) }
                }
            }
        }
    }
}

@Composable
private fun Said(notice: Notice, modifier: Modifier) {
    Row(
        modifier.semantics(mergeDescendants = true) {
            contentDescription = notice.spoken
            liveRegion = LiveRegionMode.Polite
        },
        Arrangement.spacedBy(10.dp),
        Alignment.CenterVertically,
    ) {
        if (notice.tone == Tone.CAUTION) SignPicture(Sign.CAUTION)
        Words(notice.text, LocalLettering.current.label)
    }
}
