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
import androidx.compose.ui.semantics.liveRegion
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import drawwell.surface.Action
import drawwell.surface.Event
import drawwell.surface.Sign
import drawwell.surface.Weight
import drawwell.ui.LastWords
import drawwell.ui.Told
import drawwell.ui.look.LocalColours
import drawwell.ui.look.LocalLettering
import drawwell.ui.pictures.SignPicture

/** What could not be done and what to do, or what a host has to tell: calm, and gone with a tap. */
@Composable
internal fun TroubleView(told: Told, dismiss: () -> Unit, modifier: Modifier = Modifier) {
    val lettering = LocalLettering.current
    val tone = LocalColours.current.let { if (told.cares) it.caution else it.sheet }
    Ground(tone, modifier.fillMaxWidth().testTag("trouble"), Rounded, edged = true) {
        HandRow {
            Readable {
                Row(
                    Modifier.weight(1f).padding(start = 12.dp, top = 12.dp, bottom = 12.dp).semantics(mergeDescendants = true) {
                        liveRegion = LiveRegionMode.Assertive
                    },
                    Arrangement.spacedBy(10.dp),
                    Alignment.CenterVertically,
                ) {
                    if (told.cares) SignPicture(Sign.CAUTION)
                    Column {
                        Words(told.what, lettering.action)
                        Words(told.whatToDo, lettering.body)
                    }
                }
            }
            SignButton(closing, { dismiss() }, tone = tone)
        }
    }
}

/** Not an act of the record: it never leaves the shell. */
private val closing = Action(
    key = "dismiss-trouble",
    label = LastWords.CLOSE_SIGN,
    detail = "",
    spoken = LastWords.CLOSE,
    event = Event.Wake,
    weight = Weight.QUIET,
    sign = Sign.NONE,
    chosen = false,
    open = true,
)
