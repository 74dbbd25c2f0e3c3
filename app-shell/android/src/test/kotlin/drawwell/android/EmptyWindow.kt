package drawwell.android

import android.content.ComponentName
import android.content.res.AssetManager
import androidx.activity.ComponentActivity
import org.junit.rules.ExternalResource
import org.robolectric.RuntimeEnvironment
import org.robolectric.Shadows.shadowOf

/** Tells the system of the empty activity that a contract's screens are shown in: our manifest has none but our own. */
class EmptyWindow : ExternalResource() {
    val assets: AssetManager get() = RuntimeEnvironment.getApplication().assets

    override fun before() {
        val app = RuntimeEnvironment.getApplication()
        shadowOf(app.packageManager).addActivityIfNotPresent(ComponentName(app, ComponentActivity::class.java))
    }
}
