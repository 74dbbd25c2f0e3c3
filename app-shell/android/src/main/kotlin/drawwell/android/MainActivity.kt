package drawwell.android

import android.Manifest
import android.content.Intent
import android.content.pm.PackageManager
import android.net.Uri
import android.os.Build
import android.os.Bundle
import android.view.WindowManager
import androidx.activity.ComponentActivity
import androidx.activity.compose.BackHandler
import androidx.activity.compose.setContent
import androidx.activity.result.contract.ActivityResultContracts
import androidx.compose.runtime.LaunchedEffect
import androidx.lifecycle.lifecycleScope
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
    private val picking = registerForActivityResult(ActivityResultContracts.OpenDocument()) { it?.let(::bringIn) }
    private val asking = registerForActivityResult(ActivityResultContracts.RequestPermission()) { home.host.tellWhatIsRefused() }

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

    /** Asked once in the life of the app, when there is first something to be told; tells whether that is now. */
    internal fun askToNotify(): Boolean {
        if (Build.VERSION.SDK_INT < Build.VERSION_CODES.TIRAMISU) return false
        val wanted = Manifest.permission.POST_NOTIFICATIONS
        val asked = getPreferences(MODE_PRIVATE)
        if (checkSelfPermission(wanted) == PackageManager.PERMISSION_GRANTED || asked.getBoolean(wanted, false)) return false
        asked.edit().putBoolean(wanted, true).apply()
        asking.launch(wanted)
        return true
    }

    private fun received(intent: Intent) {
        Received.from(intent)?.let(::bringIn)
    }

    private fun bringIn(uri: Uri) {
        val conversation = home.conversation
        lifecycleScope.launch {
            val file = withContext(Dispatchers.IO) { Received(applicationContext).copy(uri) }
            conversation.bringIn(file.path)
        }
    }
}
