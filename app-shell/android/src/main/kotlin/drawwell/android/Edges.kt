package drawwell.android

import android.graphics.Color
import androidx.activity.ComponentActivity
import androidx.activity.SystemBarStyle
import androidx.activity.enableEdgeToEdge
import drawwell.surface.Palette

/** From edge to edge, with the system's signs in a colour that is seen on the palette beneath them. */
internal object Edges {
    fun dress(activity: ComponentActivity, palette: Palette?) {
        val bars = SystemBarStyle.auto(Color.TRANSPARENT, Color.TRANSPARENT) { palette.isNight(it) }
        activity.enableEdgeToEdge(bars, bars)
    }
}
