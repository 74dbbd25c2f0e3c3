package drawwell.ui.caseload

import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.foundation.layout.size
import androidx.compose.runtime.Composable
import androidx.compose.runtime.LaunchedEffect
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.unit.dp
import drawwell.surface.Appearance
import drawwell.surface.Hand
import drawwell.surface.Palette
import drawwell.ui.look.LocalColours
import drawwell.ui.look.Theme
import drawwell.ui.parts.Ground
import drawwell.ui.parts.TroubleView
import drawwell.ui.pictures.WellMark

/** The consultant's whole window: the conversation with the core, and the two panes that came of it. */
@Composable
fun CaseloadShell(conversation: CaseloadConversation, host: CaseloadHost) {
    LaunchedEffect(conversation) { conversation.run() }
    val caseload = conversation.caseload
    if (caseload == null) {
        Opening(conversation, host)
        return
    }
    CaseloadView(
        caseload,
        host.typefaces,
        host.reducedMotion,
        host.higherContrast,
        conversation.trouble,
        conversation::dismissTrouble,
        conversation::send,
    )
}

/** The first frame, before the caseload is open. */
@Composable
private fun Opening(conversation: CaseloadConversation, host: CaseloadHost) {
    val look = host.lastLook ?: Appearance(Hand.RIGHT, Palette.AS_DEVICE)
    Theme(look, host.typefaces, host.reducedMotion, host.higherContrast) {
        Ground(LocalColours.current.page, Modifier.fillMaxSize(), align = Alignment.Center) {
            WellMark(Modifier.size(132.dp))
            conversation.trouble?.let {
                Box(Modifier.fillMaxSize(), Alignment.BottomCenter) { TroubleView(it, conversation::dismissTrouble) }
            }
        }
    }
}
