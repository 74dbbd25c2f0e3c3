package drawwell.android

import android.content.res.Configuration
import android.graphics.Color
import androidx.activity.ComponentActivity
import androidx.activity.SystemBarStyle
import androidx.activity.enableEdgeToEdge
import drawwell.surface.Palette

/** From edge to edge, with the system's signs in a colour that is seen on the palette beneath them. */
internal object Edges {
    fun dress(activity: ComponentActivity, palette: Palette?) {
        val bars = SystemBarStyle.auto(Color.TRANSPARENT, Color.TRANSPARENT) { resources ->
            when (palette) {
                Palette.NIGHT -> true
                Palette.LIGHT -> false
                Palette.AS_DEVICE, null ->
                    resources.configuration.uiMode and Configuration.UI_MODE_NIGHT_MASK == Configuration.UI_MODE_NIGHT_YES
            }
        }
        activity.enableEdgeToEdge(bars, bars)
    }
}
