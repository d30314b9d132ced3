;; Opens a note in Emacs with the server attached, waits for diagnostics, asks for a hover, writes what came. -*- lexical-binding: t -*-
(package-initialize)
(require 'eglot)
(require 'flymake)
(require 'json)
(require 'markdown-mode)

(add-to-list 'eglot-server-programs
             `(markdown-mode . ("node" ,(getenv "SERVER") "serve" "--stdio")))
(setq eglot-sync-connect 20 eglot-autoshutdown nil)

(defun wait-for (test)
  "Lets the editor work until TEST holds, 20 seconds at most."
  (let ((tries 400))
    (while (and (> tries 0) (not (funcall test)))
      (accept-process-output nil 0.05)
      (setq tries (1- tries)))))

(with-current-buffer (find-file-noselect (getenv "NOTE"))
  (markdown-mode)
  (apply #'eglot (eglot--guess-contact))
  (flymake-mode 1)
  (flymake-start)
  (wait-for #'flymake-diagnostics)
  (goto-char 4)
  (let* ((hover (jsonrpc-request (eglot-current-server) :textDocument/hover (eglot--TextDocumentPositionParams)))
         (seen `((diagnostics . ,(vconcat (mapcar #'flymake-diagnostic-text (flymake-diagnostics))))
                 (hover . ,(plist-get (plist-get hover :contents) :value)))))
    (with-temp-file (getenv "OUT") (insert (json-encode seen)))))
(kill-emacs 0)
