package drawwell.ui.parts

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.RowScope
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.LocalLayoutDirection
import androidx.compose.ui.unit.LayoutDirection
import drawwell.surface.Hand
import drawwell.ui.look.LocalHand
import drawwell.ui.look.LocalReading
import drawwell.ui.look.Measures

/**
 * A row for the thumb: what comes last lies nearest to it. For the left hand
 * the order turns round; what stands inside each thing does not.
 */
@Composable
internal fun HandRow(modifier: Modifier = Modifier, content: @Composable RowScope.() -> Unit) {
    CompositionLocalProvider(LocalLayoutDirection provides handDirection()) {
        Row(
            modifier.fillMaxWidth(),
            horizontalArrangement = Arrangement.spacedBy(Measures.apart),
            verticalAlignment = Alignment.CenterVertically,
            content = content,
        )
    }
}

/** Puts reading back the right way round inside a row that was turned for the hand. */
@Composable
internal fun Readable(content: @Composable () -> Unit) {
    CompositionLocalProvider(LocalLayoutDirection provides LocalReading.current, content = content)
}

/** The direction in which a row for the thumb runs. */
@Composable
internal fun handDirection(): LayoutDirection {
    val reading = LocalReading.current
    if (LocalHand.current == Hand.RIGHT) return reading
    return if (reading == LayoutDirection.Ltr) LayoutDirection.Rtl else LayoutDirection.Ltr
}
