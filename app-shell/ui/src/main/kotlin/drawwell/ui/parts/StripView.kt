package drawwell.ui.parts

import androidx.compose.foundation.clickable
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.Role
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import drawwell.surface.Event
import drawwell.surface.Notice
import drawwell.ui.look.LocalColours
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.LocalTone
import drawwell.ui.look.Measures

/** What is so all the time, over the screen: thin, because nobody looks for it at night. */
@Composable
internal fun StripView(notice: Notice, send: (Event) -> Unit) {
    Ground(LocalColours.current.foot, Modifier.fillMaxWidth().testTag(notice.key)) {
        Row(
            Modifier.fillMaxWidth().heightIn(min = THIN).padding(horizontal = Measures.margin),
            Arrangement.spacedBy(Measures.apart),
            Alignment.CenterVertically,
        ) {
            Readable {
                Words(
                    notice.text,
                    LocalLettering.current.tick,
                    Modifier.weight(1f).semantics { contentDescription = notice.spoken },
                    soft = true,
                )
                notice.actions.forEach { action ->
                    Box(
                        Modifier.heightIn(min = THIN).testTag(action.key)
                            .semantics(mergeDescendants = true) { contentDescription = action.spoken.ifEmpty { action.label } }
                            .clickable(role = Role.Button) { send(action.event) },
                        Alignment.Center,
                    ) { Words(action.label, LocalLettering.current.small, Modifier.underlined(LocalTone.current.edge)) }
                }
            }
        }
    }
}

private val THIN = 36.dp
