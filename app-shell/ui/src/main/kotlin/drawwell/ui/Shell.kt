package drawwell.ui

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
import kotlinx.coroutines.delay

/** The whole app: the conversation with the core, and the screen that came of it. */
@Composable
fun Shell(conversation: Conversation, host: Host) {
    LaunchedEffect(conversation) { conversation.run() }
    val screen = conversation.screen
    if (screen == null) {
        Opening(conversation, host)
        return
    }
    val again = screen.frame().askAgainMilliseconds
    LaunchedEffect(again) {
        while (again != null) {
            delay(again.toLong())
            conversation.lookAgain()
        }
    }
    ScreenView(
        screen,
        host.typefaces,
        host.reducedMotion,
        host.higherContrast,
        conversation.trouble,
        conversation::dismissTrouble,
        conversation::send,
    )
}

/** The first frame, before the record is open: the well, in the look that was last seen. */
@Composable
private fun Opening(conversation: Conversation, host: Host) {
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
