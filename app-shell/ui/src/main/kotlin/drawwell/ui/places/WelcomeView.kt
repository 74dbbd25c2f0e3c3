package drawwell.ui.places

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.foundation.layout.PaddingValues
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.height
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
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
import drawwell.ui.parts.Scrolling
import drawwell.ui.parts.Trouble
import drawwell.ui.parts.Words
import drawwell.ui.pictures.WellWater

/** The first screen over an empty record. */
@Composable
internal fun WelcomeView(pane: Pane, welcome: WelcomeScreen) {
    val lettering = LocalLettering.current
    Column(Modifier.fillMaxSize()) {
        Scrolling(Modifier.weight(1f), PaddingValues(Measures.margin, 0.dp)) {
            WellWater(Modifier.fillMaxWidth().height(290.dp).padding(bottom = 24.dp))
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
