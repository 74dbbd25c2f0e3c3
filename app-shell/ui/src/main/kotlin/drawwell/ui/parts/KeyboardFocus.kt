package drawwell.ui.parts

import androidx.compose.foundation.interaction.FocusInteraction
import androidx.compose.foundation.interaction.InteractionSource
import androidx.compose.foundation.interaction.PressInteraction
import androidx.compose.runtime.Composable
import androidx.compose.runtime.LaunchedEffect
import androidx.compose.runtime.State
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.remember

/** Whether the keyboard stands on a thing. Where a thumb or a mouse brought the focus, no ring is needed. */
@Composable
internal fun InteractionSource.keyboardFocus(): State<Boolean> {
    val ring = remember { mutableStateOf(false) }
    LaunchedEffect(this) {
        var pressed = false
        interactions.collect { interaction ->
            when (interaction) {
                is PressInteraction.Press -> {
                    pressed = true
                    ring.value = false
                }
                is PressInteraction.Release, is PressInteraction.Cancel -> pressed = false
                is FocusInteraction.Focus -> ring.value = !pressed
                is FocusInteraction.Unfocus -> ring.value = false
            }
        }
    }
    return ring
}
