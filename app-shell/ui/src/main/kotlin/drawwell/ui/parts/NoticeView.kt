package drawwell.ui.parts

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
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
import drawwell.ui.pictures.SignPicture

/** A quiet line, with what can be done about it. */
@Composable
internal fun NoticeView(notice: Notice, send: (Event) -> Unit, modifier: Modifier = Modifier) {
    val colours = LocalColours.current
    val ground = if (notice.tone == Tone.CAUTION) colours.caution else colours.sheet
    Ground(ground, modifier.fillMaxWidth().testTag(notice.key), Rounded, edged = true) {
        Readable {
            Column(Modifier.padding(12.dp), Arrangement.spacedBy(8.dp)) {
                Row(
                    Modifier.semantics(mergeDescendants = true) {
                        contentDescription = notice.spoken
                        liveRegion = LiveRegionMode.Polite
                    },
                    Arrangement.spacedBy(10.dp),
                ) {
                    if (notice.tone == Tone.CAUTION) SignPicture(Sign.CAUTION)
                    Words(notice.text, LocalLettering.current.body)
                }
                if (notice.actions.isNotEmpty()) {
                    HandFlow {
                        notice.actions.forEach { ActionButton(it, send, tone = colours.on(ground, it)) }
                    }
                }
            }
        }
    }
}
