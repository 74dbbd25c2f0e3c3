package drawwell.android

import android.content.Intent
import android.net.Uri
import android.os.Bundle
import android.view.WindowManager
import androidx.activity.ComponentActivity
import androidx.activity.compose.BackHandler
import androidx.activity.compose.setContent
import androidx.activity.result.contract.ActivityResultContracts
import androidx.compose.runtime.LaunchedEffect
import androidx.lifecycle.lifecycleScope
import drawwell.surface.Event
import drawwell.surface.Palette
import drawwell.ui.Shell
import drawwell.ui.frame
import kotlinx.coroutines.Dispatchers
import kotlinx.coroutines.launch
import kotlinx.coroutines.withContext

/** The one window. */
class MainActivity : ComponentActivity() {
    private val home get() = (application as App).home

    // Known before the activity starts, so that an answer finds its way even when the process died meanwhile.
    private val picking = registerForActivityResult(ActivityResultContracts.OpenDocument()) { it?.let(::importFile) }
    private val asking = registerForActivityResult(ActivityResultContracts.RequestPermission()) { home.conversation.wake() }

    override fun onCreate(saved: Bundle?) {
        super.onCreate(saved)
        val conversation = home.conversation
        dress(home.host.lastLook?.palette)
        setContent {
            val frame = conversation.screen?.frame()
            val palette = (frame?.look ?: home.host.lastLook)?.palette
            LaunchedEffect(palette, home.host.higherContrast) { dress(palette) }
            BackHandler(enabled = frame?.back != null) { frame?.back?.let { conversation.send(it.event) } }
            Shell(conversation, home.host)
        }
        if (saved == null) received(intent)
    }

    override fun onStart() {
        super.onStart()
        home.host.comesToFront(this)
        home.conversation.wake()
    }

    override fun onStop() {
        home.host.leavesFront(this)
        super.onStop()
    }

    override fun onNewIntent(intent: Intent) {
        super.onNewIntent(intent)
        received(intent)
    }

    private fun dress(palette: Palette?) {
        FirstFrame.lay(this, palette, home.host.higherContrast)
        Edges.dress(this, palette)
    }

    internal fun keepScreenOn(on: Boolean) {
        val flag = WindowManager.LayoutParams.FLAG_KEEP_SCREEN_ON
        if (on) window.addFlags(flag) else window.clearFlags(flag)
    }

    internal fun pick(contentTypes: List<String>) = picking.launch(contentTypes.toTypedArray())

    /** When there is first something to be told; the answer is told to the core. */
    internal fun askToNotify(leave: LeaveToNotify) {
        if (!leave.isOpen()) return
        leave.isAskedFor()
        asking.launch(LeaveToNotify.WANTED)
    }

    private fun received(intent: Intent) {
        Received.card(intent)?.let { home.conversation.send(Event.TakeCardIn(it)) }
        Received.from(intent)?.let(::importFile)
    }

    private fun importFile(uri: Uri) {
        val conversation = home.conversation
        lifecycleScope.launch {
            val received = Received(applicationContext)
            val file = withContext(Dispatchers.IO) { received.copy(uri) }
            conversation.bringInAnd(file.path, received::empty)
        }
    }
}
