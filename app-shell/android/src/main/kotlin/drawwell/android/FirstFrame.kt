package drawwell.android

import android.app.Activity
import android.app.UiModeManager
import android.content.Context
import android.content.res.Configuration
import android.content.res.Resources
import android.graphics.drawable.ColorDrawable
import android.os.Build
import androidx.compose.ui.graphics.toArgb
import drawwell.surface.Palette
import drawwell.ui.look.Colours

/** What is seen of the app before its screens are drawn, in the palette that was last seen. */
internal object FirstFrame {
    /** The ground of the window itself. */
    fun lay(activity: Activity, palette: Palette?, higherContrast: Boolean) {
        val page = Colours.of(palette.isNight(activity.resources), higherContrast).page.ground
        activity.window.setBackgroundDrawable(ColorDrawable(page.toArgb()))
    }

    /** The window that the system shows while the app starts. Before Android 12 it knows of no palette but the phone's own. */
    fun announce(context: Context, palette: Palette) {
        if (Build.VERSION.SDK_INT < Build.VERSION_CODES.S) return
        val mode = when (palette) {
            Palette.NIGHT -> UiModeManager.MODE_NIGHT_YES
            Palette.LIGHT -> UiModeManager.MODE_NIGHT_NO
            Palette.AS_DEVICE -> UiModeManager.MODE_NIGHT_AUTO
        }
        context.getSystemService(UiModeManager::class.java).setApplicationNightMode(mode)
    }
}

/** Whether this palette is dark on a phone as it is set; none is the phone's own. */
internal fun Palette?.isNight(resources: Resources): Boolean = when (this) {
    Palette.NIGHT -> true
    Palette.LIGHT -> false
    Palette.AS_DEVICE, null ->
        resources.configuration.uiMode and Configuration.UI_MODE_NIGHT_MASK == Configuration.UI_MODE_NIGHT_YES
}
