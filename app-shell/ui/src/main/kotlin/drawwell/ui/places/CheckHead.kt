package drawwell.ui.places

import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import drawwell.surface.CheckScreen
import drawwell.ui.look.LocalLettering
import drawwell.ui.parts.Words

/** What is read now. The voice hears with it what to do. */
@Composable
internal fun CheckHead(check: CheckScreen) = Words(
    check.headline,
    LocalLettering.current.headline,
    Modifier.padding(top = 8.dp).testTag("check-head").semantics {
        contentDescription = check.spoken
        heading()
    },
)
