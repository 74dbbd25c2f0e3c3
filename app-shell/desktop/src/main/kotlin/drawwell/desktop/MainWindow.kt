package drawwell.desktop

import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.runtime.Composable
import androidx.compose.runtime.DisposableEffect
import androidx.compose.runtime.LaunchedEffect
import androidx.compose.ui.Modifier
import androidx.compose.ui.draw.drawWithContent
import androidx.compose.ui.unit.dp
import androidx.compose.ui.window.FrameWindowScope
import androidx.compose.ui.window.Window
import androidx.compose.ui.window.application
import androidx.compose.ui.window.rememberWindowState
import drawwell.surface.Effect
import drawwell.ui.Conversation
import drawwell.ui.Shell
import drawwell.ui.Told
import java.awt.EventQueue
import java.awt.Frame
import java.awt.event.WindowEvent
import java.awt.event.WindowFocusListener
import kotlinx.coroutines.Dispatchers
import kotlinx.coroutines.delay
import kotlinx.coroutines.withContext

/** The window at the desk, of the size of a phone. */
class MainWindow(private val options: Options) {
    private var frame: Frame? = null
    private val clock = WallClock(options.time)
    private val folder = options.record?.let(DataFolder::beside) ?: DataFolder.ofPlatform()
    private val notifications: Notifications = Notifications { OwnTray.of(Icon::picture, ::front) }
    private val alarms: AlarmClock = AlarmClock({ clock.now().unixMilliseconds }, ::ring)
    private val host: DesktopHost = DesktopHost(
        DesktopTypefaces.load(),
        RecordThread(),
        Records(options.record ?: folder.record, folder::device, clock),
        alarms,
        notifications,
        FileDialogs { frame },
        folder.look(),
        options.contrast || Contrast.higher(),
    )
    private val conversation: Conversation = Conversation(host)

    fun show() {
        host.openAhead()
        application {
            Window(
                onCloseRequest = ::exitApplication,
                state = rememberWindowState(width = WIDE, height = TALL),
                title = "Drawwell",
            ) {
                Front()
                Measured(if (options.measure) Measure(::exitApplication) else null) { Shell(conversation, host) }
            }
        }
        host.close()
    }

    /** Knows the window, and looks at the record again when it comes to the front. */
    @Composable
    private fun FrameWindowScope.Front() {
        LaunchedEffect(Unit) { watchTheClock() }
        LaunchedEffect(Unit) { options.file?.let { conversation.importFile(it.absolutePath) } }
        LaunchedEffect(window) { window.iconImage = withContext(Dispatchers.Default) { Icon.picture() } }
        DisposableEffect(window) {
            frame = window
            val listener = object : WindowFocusListener {
                override fun windowGainedFocus(event: WindowEvent) = conversation.wake()
                override fun windowLostFocus(event: WindowEvent) = Unit
            }
            window.addWindowFocusListener(listener)
            onDispose { window.removeWindowFocusListener(listener) }
        }
    }

    @Composable
    private fun Measured(measure: Measure?, content: @Composable () -> Unit) {
        val drawn = if (measure == null) Modifier else Modifier.drawWithContent {
            drawContent()
            measure.drawn(recordOpen = conversation.screen != null)
        }
        Box(Modifier.fillMaxSize().then(drawn)) { content() }
    }

    /** The record is looked at again, so that the core says what is to ring next. */
    private fun ring(alarm: Effect.SetAlarm) = EventQueue.invokeLater {
        if (!notifications.show(alarm)) conversation.tell(Told("", alarm.title, alarm.text, cares = false))
        conversation.wake()
    }

    /** A desk tells nobody that its clock or its zone was set, or that it slept: it is asked. */
    private suspend fun watchTheClock() {
        val watch = ClockWatch(clock::now, System::nanoTime)
        while (true) {
            delay(ClockWatch.EVERY)
            OwnZone.look()
            if (watch.changed()) conversation.wake()
        }
    }

    private fun front() {
        frame?.toFront()
    }

    private companion object {
        val WIDE = 412.dp
        val TALL = 892.dp
    }
}
