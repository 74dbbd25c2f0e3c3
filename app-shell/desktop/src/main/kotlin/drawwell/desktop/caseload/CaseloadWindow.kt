package drawwell.desktop.caseload

import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.runtime.Composable
import androidx.compose.runtime.DisposableEffect
import androidx.compose.runtime.LaunchedEffect
import androidx.compose.ui.Modifier
import androidx.compose.ui.input.key.Key
import androidx.compose.ui.input.key.KeyShortcut
import androidx.compose.ui.unit.dp
import androidx.compose.ui.window.FrameWindowScope
import androidx.compose.ui.window.MenuBar
import androidx.compose.ui.window.Window
import androidx.compose.ui.window.application
import androidx.compose.ui.window.rememberWindowState
import drawwell.desktop.Contrast
import drawwell.desktop.DataFolder
import drawwell.desktop.DesktopTypefaces
import drawwell.desktop.FileDialogs
import drawwell.desktop.Icon
import drawwell.desktop.Options
import drawwell.desktop.RecordThread
import drawwell.desktop.WallClock
import drawwell.surface.Event
import drawwell.ui.caseload.CaseloadConversation
import drawwell.ui.caseload.CaseloadShell
import java.awt.Frame
import java.awt.event.WindowEvent
import java.awt.event.WindowFocusListener
import kotlinx.coroutines.Dispatchers
import kotlinx.coroutines.withContext

/** The consultant's window, of the size of a desk. */
class CaseloadWindow(private val options: Options) {
    private var frame: Frame? = null
    private val folder = options.caseloadFolder?.let(::DataFolder) ?: DataFolder.ofPlatform().caseload()
    private val watch = FolderWatch(folder.watched)
    private val host: DeskHost = DeskHost(
        DesktopTypefaces.load(),
        RecordThread(),
        Caseloads(folder, WallClock(options.time)),
        FileDialogs { frame },
        watch,
        folder.look(),
        options.contrast || Contrast.higher(),
    )
    private val conversation = CaseloadConversation(host)

    fun show() {
        application {
            Window(onCloseRequest = ::exitApplication, state = rememberWindowState(width = WIDE, height = TALL), title = "Drawwell") {
                Front()
                Offers()
                Box(Modifier.fillMaxSize().takesFiles { files -> files.forEach { conversation.importFile(it.path) } }) {
                    CaseloadShell(conversation, host)
                }
            }
        }
        host.close()
    }

    /** Knows the window, looks again when it comes to the front, and takes in what a watched folder brings. */
    @Composable
    private fun FrameWindowScope.Front() {
        LaunchedEffect(Unit) { options.file?.let { conversation.importFile(it.absolutePath) } }
        LaunchedEffect(Unit) { watch.run { conversation.importQuietly(it.path) } }
        LaunchedEffect(window) { window.iconImage = withContext(Dispatchers.Default) { Icon.picture() } }
        DisposableEffect(window) {
            frame = window
            val listener = object : WindowFocusListener {
                override fun windowGainedFocus(event: WindowEvent) = conversation.lookAgain()
                override fun windowLostFocus(event: WindowEvent) = Unit
            }
            window.addWindowFocusListener(listener)
            onDispose { window.removeWindowFocusListener(listener) }
        }
    }

    /** The menu, as the core words it. */
    @Composable
    private fun FrameWindowScope.Offers() {
        val menu = conversation.caseload?.menu ?: return
        MenuBar {
            Menu(menu.label) {
                menu.actions.forEach { action ->
                    Item(action.label, enabled = action.open, shortcut = opens.takeIf { action.event is Event.PickRecord }) {
                        conversation.send(action.event)
                    }
                }
            }
        }
    }

    private companion object {
        val WIDE = 1180.dp
        val TALL = 860.dp

        /** As in every program that opens files. */
        val opens = KeyShortcut(Key.O, ctrl = !onMac, meta = onMac)
        private val onMac get() = System.getProperty("os.name").startsWith("Mac")
    }
}
