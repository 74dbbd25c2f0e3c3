package drawwell.ui.look

import androidx.compose.foundation.isSystemInDarkTheme
import androidx.compose.runtime.Composable
import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.runtime.remember
import androidx.compose.runtime.staticCompositionLocalOf
import androidx.compose.ui.platform.LocalLayoutDirection
import androidx.compose.ui.unit.LayoutDirection
import drawwell.surface.Appearance
import drawwell.surface.Hand
import drawwell.surface.Palette

internal val LocalColours = staticCompositionLocalOf { Colours.Light }
internal val LocalTone = staticCompositionLocalOf { Colours.Light.page }
internal val LocalLettering = staticCompositionLocalOf<Lettering> { error("no lettering") }

/** Whether a change may be shown as a movement. */
internal val LocalMotion = staticCompositionLocalOf { true }

/** The hand that holds the phone. */
internal val LocalHand = staticCompositionLocalOf { Hand.RIGHT }

/** The way the language is read, whatever the hand. */
internal val LocalReading = staticCompositionLocalOf { LayoutDirection.Ltr }

/** Dresses all that is inside it. */
@Composable
internal fun Theme(
    look: Appearance,
    typefaces: Typefaces,
    reducedMotion: Boolean,
    higherContrast: Boolean,
    rightToLeft: Boolean = false,
    content: @Composable () -> Unit,
) {
    val night = when (look.palette) {
        Palette.NIGHT -> true
        Palette.LIGHT -> false
        Palette.AS_DEVICE -> isSystemInDarkTheme()
    }
    val colours = Colours.of(night, higherContrast)
    // The screens follow the language they are written in, and not the device's own.
    val reading = if (rightToLeft) LayoutDirection.Rtl else LayoutDirection.Ltr
    CompositionLocalProvider(
        LocalLayoutDirection provides reading,
        LocalColours provides colours,
        LocalTone provides colours.page,
        LocalLettering provides remember(typefaces) { Lettering(typefaces.letters) },
        LocalMotion provides (!night && !reducedMotion),
        LocalHand provides look.hand,
        LocalReading provides reading,
        content = content,
    )
}
