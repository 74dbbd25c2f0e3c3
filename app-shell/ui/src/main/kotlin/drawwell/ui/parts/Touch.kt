package drawwell.ui.parts

import androidx.compose.foundation.combinedClickable
import androidx.compose.foundation.interaction.MutableInteractionSource
import androidx.compose.foundation.interaction.collectIsPressedAsState
import androidx.compose.foundation.layout.defaultMinSize
import androidx.compose.runtime.Composable
import androidx.compose.runtime.LaunchedEffect
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.remember
import androidx.compose.runtime.rememberUpdatedState
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.draw.drawWithContent
import androidx.compose.ui.geometry.CornerRadius
import androidx.compose.ui.graphics.Color
import androidx.compose.ui.graphics.drawscope.Stroke
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.Role
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.selected
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import drawwell.surface.Action
import drawwell.surface.Event
import drawwell.ui.look.Measures
import kotlinx.coroutines.delay

/** Makes a thing answer to the thumb, the keyboard and the voice as this action, and name itself so. What is `held` is done while a thumb holds. */
@Composable
internal fun Modifier.touch(action: Action, ink: Color, send: (Event) -> Unit, oneOf: Boolean = false, held: Action? = null): Modifier {
    val source = remember { MutableInteractionSource() }
    val pressed by source.collectIsPressedAsState()
    val focused by source.keyboardFocus()
    var holding by remember { mutableStateOf(false) }
    val current by rememberUpdatedState(held)
    LaunchedEffect(pressed, holding) {
        if (!pressed) holding = false
        while (pressed && holding) {
            current?.takeIf { it.open }?.let { send(it.event) }
            delay(AGAIN)
        }
    }
    return this
        .defaultMinSize(Measures.target, Measures.target)
        .testTag(action.key)
        .semantics(mergeDescendants = true) {
            contentDescription = action.spoken.ifEmpty { action.label }
            if (oneOf) selected = action.chosen
        }
        .combinedClickable(
            interactionSource = source,
            indication = null,
            enabled = action.open,
            role = if (oneOf) Role.RadioButton else Role.Button,
            onLongClickLabel = held?.spoken,
            onLongClick = held?.let { { holding = true } },
        ) { send(action.event) }
        .drawWithContent {
            drawContent()
            val corner = CornerRadius(Measures.round.toPx())
            if (pressed) drawRoundRect(ink, alpha = PRESSED, cornerRadius = corner)
            if (focused) drawRoundRect(ink, cornerRadius = corner, style = Stroke(3.dp.toPx()))
        }
}

/** A thumb that holds does it again after this, in milliseconds. */
private const val AGAIN = 220L

/** How much ink a pressed thing takes on. */
private const val PRESSED = 0.14f
