package drawwell.android

import android.app.UiModeManager
import android.content.Context
import android.os.Build
import androidx.annotation.RequiresApi
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.setValue

/** Whether the phone asks for more contrast, now and whenever that changes. Before Android 14 no phone says so to an app. */
internal class Contrast(context: Context) {
    var higher by mutableStateOf(false)
        private set

    init {
        if (Build.VERSION.SDK_INT >= Build.VERSION_CODES.UPSIDE_DOWN_CAKE) listen(context)
    }

    @RequiresApi(Build.VERSION_CODES.UPSIDE_DOWN_CAKE)
    private fun listen(context: Context) {
        val manager = context.getSystemService(UiModeManager::class.java)
        higher = manager.contrast > STANDARD
        manager.addContrastChangeListener(context.mainExecutor) { higher = it > STANDARD }
    }

    private companion object {
        /** What Android calls the contrast that nobody asked for. */
        const val STANDARD = 0f
    }
}
