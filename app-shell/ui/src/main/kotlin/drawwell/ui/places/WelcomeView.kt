package drawwell.ui.places

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.layout.size
import androidx.compose.foundation.rememberScrollState
import androidx.compose.foundation.verticalScroll
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import drawwell.surface.WelcomeScreen
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.Measures
import drawwell.ui.parts.ActionButton
import drawwell.ui.parts.Foot
import drawwell.ui.parts.NoticeView
import drawwell.ui.parts.Pane
import drawwell.ui.parts.Trouble
import drawwell.ui.parts.Words
import drawwell.ui.pictures.WellMark

/** The first screen over an empty record. */
@Composable
internal fun WelcomeView(pane: Pane, welcome: WelcomeScreen) {
    val lettering = LocalLettering.current
    Column(Modifier.fillMaxSize()) {
        Column(
            Modifier.weight(1f).testTag("scroll").verticalScroll(rememberScrollState()).padding(horizontal = 28.dp),
            Arrangement.spacedBy(14.dp),
        ) {
            WellMark(Modifier.padding(top = 56.dp, bottom = 20.dp).size(132.dp))
            Words(welcome.headline, lettering.headline, Modifier.semantics { heading() })
            welcome.lines.forEach { Words(it, lettering.body) }
            pane.frame.notices.forEach { NoticeView(it, pane.send) }
        }
        Trouble(pane)
        Foot(pane) {
            Column(verticalArrangement = Arrangement.spacedBy(Measures.apart)) {
                welcome.actions.forEach { ActionButton(it, pane.send, Modifier.fillMaxWidth()) }
            }
        }
    }
}
